import { Formula } from '../parts/Formula.tsx';
import { Ledger } from '../parts/Ledger.tsx';
import { Part } from '../parts/Part.tsx';
import { SymbolOf } from '../parts/SymbolOf.tsx';
import table from '../parts/Table.module.css';
import { WorkingRows } from '../parts/WorkingRows.tsx';
import { subjects } from './cases.ts';
import type { Specimen } from './specimen.ts';

const nothing = () => {};
const year = {
  lines: [
    { what: 'sun on level ground', value: '1\u202f604' },
    { what: 'on this plane', factor: '× 1.112', value: '1\u202f784' },
    { what: 'gum tree and horizon', factor: '− 4.1 %', value: '736' },
  ],
  total: { what: 'counts at the meter', value: '643 kWh' },
};

/** Figures, sums, tables and symbols. */
export const figures: readonly Specimen[] = [
  {
    name: 'Formula',
    group: 'Figures',
    says: 'Symbols of quantities slant; words, figures and units stand upright.',
    states: [
      { state: 'an equation', show: <Formula words="ΔU = 2 · r · I · L" /> },
      { state: 'with an index', show: <Formula words="Z_s = Z_e + 1.28 · (R₁ + R₂)" /> },
      { state: 'a sentence', show: <Formula words="sum of the units on its busiest line" /> },
    ],
  },
  {
    name: 'SymbolOf',
    group: 'Figures',
    says: 'The symbol of a quantity, ISO 80000.',
    states: [
      { state: 'plain', show: <SymbolOf symbol="U" /> },
      { state: 'with an index', show: <SymbolOf symbol="I_z" /> },
      { state: 'Greek', show: <SymbolOf symbol="ΔU₂" /> },
    ],
  },
  {
    name: 'Ledger',
    group: 'Figures',
    says: 'A sum as on paper: what, factor, running value; one rule above the total, a double one below.',
    states: [{ state: 'rest', show: <Ledger label="A year" {...year} /> }],
  },
  {
    name: 'Part',
    group: 'Figures',
    says: 'One part of a sheet under its heading.',
    states: [
      { state: 'letters alone', show: <Part title="Row N1 from above">{null}</Part> },
      {
        state: 'ruled, counted',
        show: (
          <Part title="Stops the job" count={3} ruled aside="the nearest first">
            {null}
          </Part>
        ),
      },
    ],
  },
  {
    name: 'WorkingRows',
    group: 'Figures',
    says: 'Figures that show on the pad how they came about.',
    states: [
      { state: 'rest', show: <WorkingRows subjects={[subjects.figure]} selected={undefined} onSelect={nothing} /> },
      { state: 'selected', show: <WorkingRows subjects={[subjects.figure]} selected="run" onSelect={nothing} /> },
      {
        state: 'focus',
        touch: 'focus',
        show: <WorkingRows subjects={[subjects.figure]} selected={undefined} onSelect={nothing} />,
      },
    ],
  },
  {
    name: 'Table',
    group: 'Figures',
    says: 'A list as a table: hairlines between rows, figures aligned on their point.',
    states: [
      {
        state: 'rest, and a row selected',
        show: (
          <table className={table.table}>
            <thead>
              <tr>
                <th scope="col">trunk</th>
                <th scope="col" className="num">
                  rises V
                </th>
                <th scope="col" className="num">
                  home run m
                </th>
              </tr>
            </thead>
            <tbody>
              <tr data-selected>
                <th scope="row">A</th>
                <td className="num">5.32</td>
                <td className="num">31.0</td>
              </tr>
              <tr>
                <th scope="row">B</th>
                <td className="num">3.70</td>
                <td className="num">22.0</td>
              </tr>
            </tbody>
          </table>
        ),
      },
    ],
  },
];
