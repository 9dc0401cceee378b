import type { SurveyCaution } from './question.ts';

/** Hazards of a survey by its steps. Common practice, no source; the law of the place comes first. */
export const surveyCautions: Readonly<Record<string, readonly SurveyCaution[]>> = {
  arrival: [
    {
      head: 'Look up before you carry a ladder: service cables hang where it swings.',
      body: 'Dogs in, somebody of the house told, and one place agreed to meet if anything happens.',
    },
  ],
  board: [
    {
      head: 'Asbestos: if nobody is sure, it is. Leave the cover on.',
      body: 'Do not drill, cut or brush it. A sample first, then a licensed remover.',
    },
    {
      head: 'An open board is live, with the main off too. Only the licensed person opens it.',
      body: 'Arc-rated dress, insulated tools, nobody alone, nobody of the house near. Cover what you do not look at.',
    },
  ],
  live: [
    {
      head: 'You measure live. Prove the meter on a known source, before and after.',
      body: 'Fused leads rated for the board, one hand, dry ground. Neutral to earth above a few volts: stop and tell the network.',
    },
  ],
  existing: [
    {
      head: 'More than one source: main off is not dead.',
      body: 'Solar, battery and generator each have a switch of their own. Read plates; open nothing.',
    },
  ],
  roof: [
    {
      head: 'Nobody past the edge. Measure from the ground and from the ladder.',
      body: 'Tie the ladder top and bottom, one out for four up, one metre past the edge. Beyond it only behind a guard or a line.',
    },
    {
      head: 'A roof is fragile until shown otherwise. Every skylight is.',
      body: 'Old sheet may hold asbestos: nobody walks on it, drills or brushes it before a sample says no.',
    },
  ],
  attic: [
    {
      head: 'Walk on timber. Ceilings do not carry you.',
      body: 'Mask and lamp; cables lie under the insulation and are live. In heat: minutes, and somebody at the hatch.',
    },
  ],
};
