export { type Beam, type BeamExtreme, type BeamInput, continuousBeam, type PointLoad } from './continuousBeam.ts';
