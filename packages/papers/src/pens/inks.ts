import type { Ink, WireColour } from '../drawing/model.ts';

/** Inks on printed paper: black on white, every state dark enough for AA on white (8.5 : 1 and up). */
export const printInks: Readonly<Record<Ink, string>> = {
  ink: '#000000',
  quiet: '#3a3a3a',
  rule: '#9a9a9a',
  fails: '#9c0d12',
  meets: '#0b4d2c',
  ask: '#123c92',
  marker: '#ececec',
  tint: '#f2f2f2',
  'tint-deep': '#dcdcdc',
  film: '#ffffff',
  'on-solid': '#ffffff',
};

/** The screen's name for each ink; a paper (day, dark, roof) redefines it. */
export const inkVariables: Readonly<Record<Ink, string>> = {
  ink: '--ink',
  quiet: '--ink-quiet',
  rule: '--rule',
  fails: '--ink-fails',
  meets: '--ink-meets',
  ask: '--ink-ask',
  marker: '--marker-wash',
  tint: '--tint',
  'tint-deep': '--tint-deep',
  film: '--film',
  'on-solid': '--ink-on-solid',
};

/** Colours of insulation, the same on every paper; green-yellow is green with a stripe of yellow. */
export const wireInks: Readonly<Record<WireColour, string>> = {
  brown: '#7c4a28',
  black: '#14171a',
  grey: '#8b9196',
  red: '#bf1f1c',
  white: '#ffffff',
  blue: '#1f429b',
  'light-blue': '#3b8bcf',
  green: '#2d8a3e',
  yellow: '#f1d21f',
  'green-yellow': '#2d8a3e',
};

/** The stripe of a green-and-yellow conductor. */
export const stripeInk = wireInks.yellow;
/** Dashes of the stripe, mm. */
export const stripeDash = [1.6, 1.6] as const;

/** Dashes of a line kind, mm: hidden 7 and 3.5, centre 18 3 3 3, in 1/96 inch. */
export const dashes: Readonly<Record<'full' | 'hidden' | 'centre', readonly number[]>> = {
  full: [],
  hidden: [1.85, 0.93],
  centre: [4.76, 0.79, 0.79, 0.79],
};

/** Ink on each edge of a tube, mm. */
export const casingMm = 0.3;
/** Width of a halo beyond the lettering, as a part of the cap height. */
export const haloPart = 0.32;
