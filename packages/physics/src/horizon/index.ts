export {
  type HorizonBlocking,
  type HorizonBlockingInput,
  type HorizonHours,
  horizonBlocking,
} from './horizonBlocking.ts';
export { type HorizonPairs, type HorizonProfile, horizonElevationDeg, horizonProfile } from './horizonProfile.ts';
