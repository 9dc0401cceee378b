import { expect, test } from 'vitest';
import { recogniseFile } from './recogniseFile.ts';

test.each([
  ['epw', 'LOCATION,Boston Logan IntL Arpt,MA,USA,TMY3,725090,42.37,-71.02,-5.0,6.0\r\nDESIGN CONDITIONS,0\r\n'],
  ['epw', 'LOCATION;Boston;MA;USA;TMY3;725090;42.37;-71.02;-5.0;6.0\n'],
  ['epw', 'DESIGN CONDITIONS,1,Climate Design Data 2009\n'],
  ['tmy3', '723170,"GREENSBORO",NC,-5.0,36.100,-79.950,273\nDate (MM/DD/YYYY),Time (HH:MM),ETR (W/m^2)\n'],
  ['pvgis-tmy', 'Latitude (decimal degrees):\t45.000\r\nElevation (m): 250\r\ntime(UTC),T2m,RH,G(h)\r\n'],
  ['pvgis-hourly', 'Latitude (decimal degrees): 45.000\nSlope: 30 deg.\ntime,P,G(i),H_sun,T2m,WS10m,Int\n'],
  ['pvgis-json', '{"inputs": {"location": {}}, "outputs": {"tmy_hourly": []}}'],
  ['hourly-weather', '\ufeffsun_time_utc,month,ghi,dni,dhi,air_c,wind_m_s\n'],
  ['nem12', '100,NEM12,202506010000,MDA,RET\n'],
  ['nem12', '200,6123456789,E1B1,E1,E1,N1,12345,kWh,30,\n'],
  ['nem13', '100,NEM13,202506010000,MDA,RET\n'],
  ['green-button', '<?xml version="1.0"?><feed xmlns="http://www.w3.org/2005/Atom" xmlns:e="http://naesb.org/espi">'],
  ['osm-xml', '<?xml version="1.0"?>\n<osm version="0.6">'],
  ['geojson', '{ "type": "FeatureCollection", "features": [] }'],
  ['web-page', '<!DOCTYPE html><html><title>Error</title>'],
  ['service-error', '{"message": "Location over the sea", "status": 400}'],
  ['register-map', '5375 6e53 0001 0042'],
  ['table', 'time,kWh\n2025-01-01 00:00,0.2\n'],
  ['unknown', 'Dear reader,'],
  ['unknown', ''],
])('%s is known by its content', (kind, text) => {
  expect(recogniseFile(text).kind).toBe(kind);
});
