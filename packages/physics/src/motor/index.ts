export {
  type LockedRotor,
  type LockedRotorInput,
  lockedRotor,
  type MotorKind,
  type MotorStart,
  type MotorStartInput,
  motorStart,
  softStartTorqueShare,
} from './motorStart.ts';
