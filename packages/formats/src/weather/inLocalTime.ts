import { HOUR_MS } from './calendar.ts';
import { WEATHER_QUANTITIES, type WeatherQuantity, type WeatherYear } from './weatherYear.ts';

/**
 * A year whose stamps are UTC, booked to the months of local standard time: hours that fall over
 * the end of a month locally change month, and those that fall out of the year come round to its
 * other end. Instants stay as they are. The sums do not change.
 *
 * @param utcOffsetH  Local standard time against UTC, h, east positive.
 */
export function inLocalTime(year: WeatherYear, utcOffsetH: number): WeatherYear {
  const n = year.sunTimeMs.length;
  const local = Uint8Array.from(year.sunTimeMs, (ms) => new Date(ms + utcOffsetH * HOUR_MS).getUTCMonth() + 1);
  const order = Array.from({ length: n }, (_, i) => i);
  // within the file months are in order, so only the turn of the year can be out of place
  const head = order.filter((i) => local[i] === 1 && year.month[i] === 12);
  const tail = order.filter((i) => local[i] === 12 && year.month[i] === 1);
  const middle = order.filter(
    (i) => !(local[i] === 1 && year.month[i] === 12) && !(local[i] === 12 && year.month[i] === 1),
  );
  const turned = [...head, ...middle, ...tail];
  const take = (array: Float64Array) => Float64Array.from(turned, (i) => array[i] as number);
  const has = Object.fromEntries(
    WEATHER_QUANTITIES.map((name) => [name, Uint8Array.from(turned, (i) => year.has[name][i] as number)]),
  ) as Record<WeatherQuantity, Uint8Array>;
  return {
    ...year,
    place: year.place && { ...year.place, utcOffsetH },
    sunTimeMs: take(year.sunTimeMs),
    month: Uint8Array.from(turned, (i) => local[i] as number),
    ghi: take(year.ghi),
    dni: take(year.dni),
    dhi: take(year.dhi),
    airC: take(year.airC),
    windMS: take(year.windMS),
    has,
    albedo: year.albedo && take(year.albedo),
  };
}
