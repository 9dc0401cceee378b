import type { Conductor, Job } from '@eaveline/job';

/** `16 mm²`, `2 AWG`: as it stands on the cable. */
export function conductorWords({ areaMm2, awg }: Pick<Conductor, 'areaMm2' | 'awg'>): string {
  return areaMm2 === undefined ? `${awg} AWG` : `${areaMm2} mm²`;
}

/** Size of the conductor of a cable sheet; its name where it is no cable. */
export function sizeOf({ choices }: Pick<Job, 'choices'>, sheetId: string): string {
  const sheet = choices.equipment[sheetId];
  return sheet?.kind === 'cable' ? conductorWords(sheet.conductor) : (sheet?.name ?? sheetId);
}
