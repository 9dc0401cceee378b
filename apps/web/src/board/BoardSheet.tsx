import { FindingsHere } from '../checks/FindingsHere.tsx';
import type { SheetProps } from '../desk/sheetView.ts';
import { Wires } from '../drawing/Wires.tsx';
import { stepsOf } from '../job/path.ts';
import { MixedColours } from '../parts/MixedColours.tsx';
import { NumberField } from '../parts/NumberField.tsx';
import { Part } from '../parts/Part.tsx';
import { PickField } from '../parts/PickField.tsx';
import { TickField } from '../parts/TickField.tsx';
import fields from '../trunks/TrunkFields.module.css';
import { CircuitGrid } from './CircuitGrid.tsx';
import { LineBars } from './LineBars.tsx';
import { SourceCircuits } from './SourceCircuits.tsx';

const fact = (at: string) => stepsOf(`facts.board.${at}`);

/** Sheet 05: circuits that carry sources to the board, what its bars and lines take, and the board as found. */
export function BoardSheet({ plan, job, selected, onSelect }: SheetProps) {
  const waiting = (at: string) =>
    plan.site.missing.find((missing) => missing.at === `facts.board.${at}`)?.rules.length ?? 0;
  const { wiring } = job.facts.board;
  const lines = { 'single-phase': 1, 'split-phase': 2, 'three-phase': 3 } as const;
  return (
    <>
      <MixedColours mixed={job.facts.board.wiringMixed} />
      <Part title="Circuits of the sources" count={plan.board.circuits.length} ruled>
        <SourceCircuits
          circuits={plan.board.circuits}
          job={job}
          findings={plan.checks.findings}
          selected={selected}
          onSelect={onSelect}
        />
      </Part>
      <Part title="Sources on each line and on the bars">
        <LineBars board={plan.board} selected={selected} onSelect={onSelect} />
      </Part>
      <Part title="The board as found">
        <div className={fields.fields}>
          <NumberField label="Bars" path={fact('busA')} unit="A" optional waiting={waiting('busA')} />
          <NumberField
            label="Main switch"
            path={fact('mainSwitchA')}
            unit="A"
            optional
            waiting={waiting('mainSwitchA')}
          />
          <NumberField label="Breaks" path={fact('breakingKA')} unit="kA" optional waiting={waiting('breakingKA')} />
          <NumberField label="Free ways" path={fact('freeWays')} unit="" optional waiting={waiting('freeWays')} />
          <NumberField label="Heat in it" path={fact('ambientC')} unit="°C" optional waiting={waiting('ambientC')} />
          <PickField
            label="Backing"
            path={fact('backing')}
            none="not looked at"
            options={['metal', 'plastic', 'timber', 'asbestos', 'unknown'].map((value) => ({ value, words: value }))}
          />
          <PickField
            label="Colours"
            path={fact('wiring')}
            none="not looked at"
            options={[
              { value: 'iec', words: 'brown, black, grey' },
              { value: 'au-nz', words: 'red, white, blue' },
              { value: 'gb-older', words: 'red, yellow, blue' },
              { value: 'us-120-240', words: 'black, red' },
              { value: 'us-120-208', words: 'black, red, blue' },
            ]}
          />
          <TickField label="Colours are mixed in it" path={fact('wiringMixed')} />
        </div>
        {wiring !== undefined && <Wires scheme={wiring} lines={lines[job.facts.supply.system]} />}
      </Part>
      <Part title="Circuits of the house" count={Object.keys(job.facts.loads.circuits).length}>
        <CircuitGrid plan={plan} job={job} selected={selected} onSelect={onSelect} />
      </Part>
      <FindingsHere findings={plan.checks.findings} sheet="05" selected={selected} onSelect={onSelect} />
    </>
  );
}
