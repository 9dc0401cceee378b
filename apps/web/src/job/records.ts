import type { Job } from '@eaveline/job';

/**
 * Records of two states of a job, together: what was seen on site is never put out of a job by another state of it.
 * Where both have one under a name, the second's stands.
 */
export function recordsOfBoth(one: Job['records'], other: Job['records']): Job['records'] {
  return {
    ...one,
    ...other,
    serials: { ...one.serials, ...other.serials },
    readings: { ...one.readings, ...other.readings },
    torques: { ...one.torques, ...other.torques },
    photos: { ...one.photos, ...other.photos },
    signatures: { ...one.signatures, ...other.signatures },
  };
}
