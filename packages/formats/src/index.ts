export {
  CLIMATE_REACH_KM,
  type ClimateEstimate,
  type ClimateShare,
  climateFrom,
  climateNear,
  greatCircleKm,
} from './climate/climateNear.ts';
export { type ClimatePlace, climatePlaces, type GhiClass } from './climate/climatePlaces.ts';
export { type Assumption, type Reading, type Remark, remarkSentence, type Severity } from './reading/remark.ts';
export { REMARKS_OF_A_KIND, type RemarkLog, remarkLog } from './reading/remarkLog.ts';
export { type FileKind, type Recognised, recogniseFile } from './recognise/recogniseFile.ts';
export { type DecodedText, decodeText, decodeUtf8, MAX_FILE_BYTES } from './text/decodeText.ts';
export { plainNumber, splitFields } from './text/fields.ts';
export { textLines } from './text/lines.ts';
export { inLocalTime } from './weather/inLocalTime.ts';
export { readEpw } from './weather/readEpw.ts';
export { readHourlyWeather } from './weather/readHourlyWeather.ts';
export { readPvgis } from './weather/readPvgis.ts';
export { readPvgisJson } from './weather/readPvgisJson.ts';
export { readTmy3 } from './weather/readTmy3.ts';
export { readWeatherFile } from './weather/readWeatherFile.ts';
export type {
  HourRow,
  WeatherPlace,
  WeatherQuantity,
  WeatherReadOptions,
  WeatherSums,
  WeatherYear,
} from './weather/weatherYear.ts';
