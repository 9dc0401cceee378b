/** One fault of the practice yard: what is wrong, where, and who is meant to see it. */
export interface PracticeFault {
  readonly id: string;
  /** What is wrong, in words. */
  readonly what: string;
  /** Path in the job, where it was planted in the design; else the place in the yard. */
  readonly where: string;
  /**
   * `checks`: from the design alone. `tests`: a reading beside its prediction. `data`: first days of production
   * or logged voltage.
   */
  readonly foundBy: 'checks' | 'tests' | 'data';
  /** The question a check asks, or the reading that gives the fault away. */
  readonly gives: string;
}

type Row = readonly [id: string, where: string, what: string, gives: string];

/*
 * Planted in the design, found by the checks; the last three and the neutral as a question. In brief:
 *
 *   rise           44 m of 2.5 mm² for twelve units
 *   trunk-current  12 × 1.74 A = 20.9 A on a 20 A breaker
 *   capacity       2.5 mm² under 200 mm of insulation at 60 °C, two together
 *   cold-voltage   38.9 V · (1 + 0.0025 · 33) = 42.1 V on a unit of 42 V
 *   short-current  13.9 A · 1.25 = 17.4 A on a unit of 13 A
 *   breaking       7.2 kA at the board, 6 kA breakers
 *   two-way        a one-way residual device fed from its load side
 *   fixing         a tile hook on sheet metal
 *   clamp-zone     rails at 200 mm, the zone begins at 344 mm
 *   setback        first module 100 mm from the verge, 300 mm asked
 *   flue           a module inside the 600 mm round the flue
 *   drop-reach     drops every 1.20 m under modules every 1.742 m
 *   battery-window 200 mm from the office window, 600 mm asked
 *   battery-room   a battery in a bedroom
 *   battery-wall   a combustible wall without a barrier
 *   start          46 A · 230 V = 10.6 kVA on a battery of 7.0 kVA
 *   three-phase    a three-phase lathe on a backup of one line
 *   backup-run     6.35 kW kept alive on 4.6 kVA, without the lathe
 *   backup-rcd     sockets moved without a residual device
 *   export         set to 9 kVA a line, allowed 5
 *   approved       5 kVA approved, 16.4 kVA drawn
 *   free-ways      four breakers, two ways free
 *   slope-measures 5.10 m measured, 4.895 m by plan width and pitch
 *   foot-uplift    feet 2.7 m apart: 2.7 · 0.861 m of module on one foot
 *   battery-bollard cars pass the yard wall, no bollard
 *   neutral        the neutral of the lights, which move to the backed-up side, was not traced
 *   balance        5.8 kVA of solar on L1, none on L2 and L3
 *   mixed-wiring   old and new colours in one board
 *   backing        board of 1972, its backing unknown
 *   roof-asbestos  roof of 1972, not sampled
 */
const BY_CHECKS: readonly Row[] = [
  ['rise', 'choices.trunks.a.homeRun', 'home run far too long for its size', 'voltage rise to the last unit'],
  ['trunk-current', 'choices.trunks.a.breakerSheet', 'too many units on one breaker', 'units against breaker'],
  ['capacity', 'choices.trunks.a.homeRun.route.insulationMm', 'cable buried in insulation', 'cable capacity derated'],
  [
    'cold-voltage',
    'choices.equipment.alder-250.maxDcV',
    'unit too low for the module on a cold dawn',
    'cold module voltage',
  ],
  [
    'short-current',
    'choices.equipment.alder-250.maxIscA',
    'unit too weak for the module at a cloud edge',
    'module short-circuit current',
  ],
  ['breaking', 'facts.supply.prospectiveA', 'breakers below the prospective current', 'breaking capacity'],
  [
    'two-way',
    'choices.trunks.b.breakerSheet',
    'one-way residual device fed from behind',
    'devices for current both ways',
  ],
  ['fixing', 'choices.mounting.fixingSheet', 'tile hook on sheet metal', 'fixing against covering'],
  ['clamp-zone', 'choices.rows.north-1.railsMm', 'rails outside the clamp zone', 'rails against clamp zone'],
  ['setback', 'choices.rows.north-1.uM', 'row too near the verge', 'setback'],
  [
    'flue',
    'facts.roof.obstructions.flue',
    'module inside the ring round the flue',
    'clear of what stands out of the roof',
  ],
  ['drop-reach', 'choices.trunks.b.cableSheet', 'portrait trunk under landscape modules', 'drop reach'],
  ['foot-uplift', 'choices.mounting.footSpacingMm', 'feet 2.7 m apart', 'uplift of the worst fixing'],
  ['battery-window', 'choices.batteries.outside.place', 'battery beside a window', 'battery clear of openings'],
  ['battery-room', 'choices.batteries.inside.place', 'battery in a bedroom', 'rooms barred to batteries'],
  ['battery-wall', 'choices.batteries.outside.barrier', 'combustible wall, no barrier', 'barrier behind the battery'],
  ['battery-bollard', 'choices.batteries.outside.bollard', 'cars pass, no bollard', 'vehicle guard'],
  ['start', 'choices.backup.circuits.cooling', 'air-conditioner the battery cannot start', 'largest start in island'],
  [
    'three-phase',
    'choices.backup.circuits.lathe',
    'three-phase machine on one backed-up line',
    'lines of backed-up circuits',
  ],
  [
    'backup-run',
    'choices.backup.circuits.heater',
    'more kept alive than the battery carries',
    'running power in island',
  ],
  [
    'backup-rcd',
    'choices.backup.circuits.sockets',
    'backed-up circuit without a residual device',
    'residual devices in island',
  ],
  [
    'neutral',
    'facts.loads.circuits.lights.neutralTraced',
    'neutral of a moved circuit not traced',
    'neutral traced (ask)',
  ],
  ['balance', 'choices.trunks.a.lines', 'all solar on one line of three', 'phase balance'],
  ['export', 'choices.exportLimitSetVA', 'export set above what the network allows', 'export limit'],
  ['approved', 'facts.network.approvedVA', 'more drawn than approved', 'size against approval'],
  ['free-ways', 'facts.board.freeWays', 'no ways left in the board', 'free ways'],
  ['mixed-wiring', 'facts.board.wiringMixed', 'old and new colours in one board', 'wiring colours (ask)'],
  ['backing', 'facts.board.backing', 'board of 1972, backing unknown', 'asbestos in the board (ask)'],
  ['roof-asbestos', 'facts.roof.planes.north.asbestos', 'roof of 1972, not sampled', 'asbestos in the roof (ask)'],
  [
    'slope-measures',
    'facts.roof.planes.north.slopeLengthM',
    'two measures of the slope disagree',
    'measures within one in a hundred',
  ],
];

const BY_TESTS: readonly Row[] = [
  ['ct-reversed', 'CT of L1', 'current transformer turned round', 'a known load makes import fall'],
  ['ct-phase', 'CT of L2', 'current transformer on another phase', '2 kW read as about −1 kW (cos 120°)'],
  ['ct-open', 'CT of L3', 'current transformer not closed', 'reads 60 to 95 % of a known load'],
  ['swapped-phases', 'main switch', 'two lines changed over', 'rotation differs from the survey'],
  ['wrong-profile', 'units', 'grid profile as it left the factory', 'profile read back differs from the letter'],
  ['end-open', 'end of trunk A', 'trunk end not sealed', 'insulation low when wet, good when dry'],
  ['drop-open', 'trunk B, spare drop', 'unused drop without its cap', 'caps counted, insulation low'],
  ['drop-loose', 'trunk A, drop 7', 'drop not clicked home', 'one unit not heard, power short by one'],
  ['plug-loose', 'module north-1-4', 'd.c. plug not home', 'd.c. voltage at the unit 0 or jumping'],
  ['rail-bond', 'upper rail of row 1', 'rail not bonded over its splice', 'more than 1 Ω to the earth bar'],
  ['neutral-loose', 'main neutral', 'neutral hardly held', 'line voltages differ, neutral to earth not near 0'],
  ['island-neutral', 'changeover', 'neutral not earthed in island', 'residual device does not trip in island'],
  ['torque', 'breaker of trunk A', 'terminal not brought to torque', 'hot joint, millivolts across it'],
  ['screw-air', 'foot 3 of row 1', 'screw beside the rafter', 'no bite, light torque'],
  ['isolator-water', 'roof box', 'entry from above', 'moisture, insulation low'],
  ['nuisance-trip', 'residual device of trunk B', 'filter currents near half its rating', 'standing leakage measured'],
  ['export-open', 'gateway', 'export limit not held', 'load rejected, export stays above the limit'],
];

const BY_DATA: readonly Row[] = [
  ['mapped-wrong', 'units of row 1', 'two serials changed over', 'shadow passes in another order than the places'],
  ['street-voltage', 'supply', 'street voltage high by itself', 'volts at the board high at night with little load'],
  ['volt-watt', 'units', 'power falls as it is set to', 'power falls with voltage above 253 V: no fault'],
  ['battery-full', 'island', 'solar with a full battery', 'frequency climbs, solar comes and goes'],
  ['plugs-mated', 'module north-2-2', 'd.c. plugs of two makes mated', 'a warm plug; power falls away over months'],
  ['tile-strain', 'covering', 'fixing bears on the covering', 'a stain in the ceiling after rain'],
];

const told = (rows: readonly Row[], foundBy: PracticeFault['foundBy']): PracticeFault[] =>
  rows.map(([id, where, what, gives]) => ({ id, where, what, gives, foundBy }));

/** Every fault of the practice yard. Those found by checks are in the job; the others are made in the yard by hand. */
export const practiceYardFaults: readonly PracticeFault[] = [
  ...told(BY_CHECKS, 'checks'),
  ...told(BY_TESTS, 'tests'),
  ...told(BY_DATA, 'data'),
];
