// Written so that an old Node can still read it: this is the file that tells it to step aside.

/** The oldest Node that every part of the product accepts. */
export const OLDEST = [20, 19];

/** Why this Node will not do, in one line with the way out; undefined when it will. */
export function nodeTooOld(version) {
  const [major, minor] = version.split('.').map(Number);
  if (major > OLDEST[0] || (major === OLDEST[0] && minor >= OLDEST[1])) return undefined;
  return `Eaveline needs Node ${OLDEST.join('.')} or newer; this is ${version}. Install a newer one from nodejs.org, then run the same command again.`;
}
