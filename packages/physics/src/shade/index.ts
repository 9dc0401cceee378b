export { type BeamRaster, beamOpen, beamRaster, type SunCells, sunCells, type Veil } from './beamRaster.ts';
export {
  block,
  type ConvexBody,
  cone,
  crown,
  cylinder,
  type FlatBody,
  flatBody,
  flatPolygon,
  type Point,
  prism,
  type RoundBody,
} from './convexBody.ts';
export { type SkyPatch, skyPatch, stands } from './skyPatch.ts';
export { hiddenHeights, skyShare } from './skyShare.ts';
