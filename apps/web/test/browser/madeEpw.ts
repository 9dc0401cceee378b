const DAYS_IN = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
const PLACE = { name: 'Made Hill', latitudeDeg: -37.45, longitudeDeg: 143.8, utcOffsetH: 10, elevationM: 440 } as const;

const rad = (deg: number) => (deg * Math.PI) / 180;

/** Cosine of the sun's distance from the zenith in the middle of an hour, night as 0. */
function cosZenith(dayOfYear: number, hour: number): number {
  const turn = (2 * Math.PI * (dayOfYear - 1)) / 365;
  // declination: Cooper 1969; equation of time in minutes: Spencer 1971
  const declination = rad(23.45 * Math.sin(rad((360 * (284 + dayOfYear)) / 365)));
  const minutes =
    229.18 *
    (0.000075 +
      0.001868 * Math.cos(turn) -
      0.032077 * Math.sin(turn) -
      0.014615 * Math.cos(2 * turn) -
      0.040849 * Math.sin(2 * turn));
  const solarH = hour - 0.5 + (PLACE.longitudeDeg / 15 - PLACE.utcOffsetH) + minutes / 60;
  const latitude = rad(PLACE.latitudeDeg);
  const cos =
    Math.sin(latitude) * Math.sin(declination) +
    Math.cos(latitude) * Math.cos(declination) * Math.cos(rad(15 * (solarH - 12)));
  return Math.max(cos, 0);
}

/** One row: of its 35 fields those that are read, the others as codes for missing. */
function row(month: number, day: number, hour: number, dayOfYear: number): string {
  const cos = cosZenith(dayOfYear, hour);
  // an invented sky without clouds: 950 W/m² behind one air mass of 0.3, a tenth of the height as diffuse
  const direct = cos > 0 ? Math.round(950 * Math.exp(-0.3 / (cos + 0.05))) : 0;
  const diffuse = Math.round(110 * cos);
  const global = Math.round(direct * cos + diffuse);
  const airC = 14 - 6 * Math.cos(rad((360 * (dayOfYear + 163)) / 365)) + 5 * Math.sin(rad(15 * (hour - 9)));
  const windMS = 3 + 1.5 * Math.sin(rad(15 * (hour - 8)));
  const fields = Array<string>(35).fill('9999');
  fields.splice(0, 6, '2001', `${month}`, `${day}`, `${hour}`, '60', 'made');
  fields.splice(6, 1, airC.toFixed(1));
  fields.splice(13, 3, `${global}`, `${direct}`, `${diffuse}`);
  fields.splice(21, 1, windMS.toFixed(1));
  fields.splice(32, 1, '0.2');
  return fields.join(',');
}

/**
 * A whole year of weather in the layout of an EPW file (EnergyPlus, Auxiliary Programs), 8760 rows worked out from a
 * formula: a cloudless sky over an invented hill 22 km north-west of Larramere. Nothing in it was measured anywhere.
 */
export function madeEpw(): string {
  const { name, latitudeDeg, longitudeDeg, utcOffsetH, elevationM } = PLACE;
  const lines = [
    `LOCATION,${name},-,AUS,made for a test,0,${latitudeDeg},${longitudeDeg},${utcOffsetH},${elevationM}`,
    'DESIGN CONDITIONS,0',
    'TYPICAL/EXTREME PERIODS,0',
    'GROUND TEMPERATURES,0',
    'HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0',
    'COMMENTS 1,made by a formula',
    'COMMENTS 2,',
    'DATA PERIODS,1,1,Data,Monday,1/1,12/31',
  ];
  let dayOfYear = 0;
  for (const [index, days] of DAYS_IN.entries()) {
    for (let day = 1; day <= days; day++) {
      dayOfYear += 1;
      for (let hour = 1; hour <= 24; hour++) lines.push(row(index + 1, day, hour, dayOfYear));
    }
  }
  return `${lines.join('\r\n')}\r\n`;
}
