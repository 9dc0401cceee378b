import { useId, useRef } from 'react';
import { Chain } from '../drawing/Chain.tsx';
import { Drawing } from '../drawing/Drawing.tsx';
import { DrawnMark } from '../drawing/DrawnMark.tsx';
import { Hatch } from '../drawing/Hatch.tsx';
import { NorthArrow } from '../drawing/NorthArrow.tsx';
import { Sideways } from '../drawing/Sideways.tsx';
import { Thing } from '../drawing/Thing.tsx';
import { Tube } from '../drawing/Tube.tsx';
import { Unread } from '../drawing/Unread.tsx';
import { SCHEMES, type Scheme, Wires } from '../drawing/Wires.tsx';
import type { Specimen } from './specimen.ts';

const nothing = () => {};

/** A module drawn as on the roof: the thing itself bears its state. */
function Module({ selected = false, open }: { readonly selected?: boolean; readonly open?: 'fails' | 'ask' }) {
  return (
    <Drawing width={90} height={110} label="one module">
      <Thing id="module:n1-7" label="N1·7, north plane row 1" selected={selected} onSelect={nothing}>
        <rect className={selected ? 'pen70 on-wash' : 'pen35 on-film'} x="10" y="6" width="62" height="96" />
        <path d="M18 92H64" stroke="var(--casing)" strokeWidth="6" />
        <path d="M18 92H64" stroke="var(--l1)" strokeWidth="3.6" />
        <text className={`halo ${selected ? 'bold' : ''}`} x="41" y="52" textAnchor="middle">
          1·7
        </text>
        <text className="zone close halo" x="41" y="66" textAnchor="middle">
          L1
        </text>
        <DrawnMark state={open} x={62} y={16} />
        <rect className="ring" x="10" y="6" width="62" height="96" />
      </Thing>
    </Drawing>
  );
}

function Hatched({ ink }: { readonly ink: 'fails' | 'ink' | 'quiet' }) {
  const id = useId();
  return (
    <svg width="60" height="34" aria-hidden="true">
      <defs>
        <Hatch id={id} ink={ink} />
      </defs>
      <rect className="pen25" x="1" y="1" width="58" height="32" style={{ fill: `url(#${id})` }} />
    </svg>
  );
}

function WideDrawing() {
  const room = useRef<HTMLDivElement>(null);
  return (
    <Sideways room={room}>
      <Drawing width={900} height={40} label="a long cable">
        <Thing id="trunk:a" label="Trunk A" selected={false} onSelect={nothing}>
          <path className="pen50" d="M4 20H896" />
          <rect className="ring" x="2" y="8" width="892" height="24" />
        </Thing>
      </Drawing>
    </Sideways>
  );
}

/** Things drawn, their sizes, their conductors. */
export const drawingParts: readonly Specimen[] = [
  {
    name: 'Thing',
    group: 'Drawing',
    says: 'A thing drawn that is a button: name, place and state to a screen reader; arrows walk them.',
    states: [
      { state: 'rest', show: <Module /> },
      { state: 'selected', show: <Module selected /> },
      { state: 'focus', touch: 'focus', show: <Module /> },
      { state: 'failing', show: <Module open="fails" /> },
      { state: 'asking', show: <Module open="ask" /> },
    ],
  },
  {
    name: 'DrawnMark',
    group: 'Drawing',
    says: 'The mark on the very thing: a solid block for fails, a ring for asks, its word where there is room.',
    states: (['fails', 'ask'] as const).map((state) => ({
      state: state === 'ask' ? 'asking' : 'failing',
      show: (
        <svg width="80" height="24" aria-hidden="true">
          <DrawnMark state={state} x={12} y={12} word="right" />
        </svg>
      ),
    })),
  },
  {
    name: 'Wires',
    group: 'Drawing',
    says: 'A conductor is a tube: the casing carries the contrast, letters stand at both ends.',
    states: [
      ...(Object.keys(SCHEMES) as Scheme[]).map((scheme) => ({
        state: scheme,
        show: <Wires scheme={scheme} width={200} />,
      })),
      { state: 'us-120-208, lettered A to C', show: <Wires scheme="us-120-208" letters="A" width={200} /> },
    ],
  },
  {
    name: 'Tube',
    group: 'Drawing',
    says: 'One conductor, or two and three side by side along one line.',
    states: [
      ['L1', ['L1']],
      ['L1 and L2', ['L1', 'L2']],
      ['L1 to L3', ['L1', 'L2', 'L3']],
    ].map(([state, lines]) => ({
      state: state as string,
      show: (
        <svg width="228" height="22" role="img" aria-label={`tube of ${state}`}>
          <Tube d="M62 11H166" lines={lines as ('L1' | 'L2' | 'L3')[]} />
          <text className="close" x="0" y="15">
            {(lines as string[]).join('·')}
          </text>
          <text className="close" x="174" y="15">
            {(lines as string[]).join('·')}
          </text>
        </svg>
      ),
    })),
  },
  {
    name: 'Chain',
    group: 'Drawing',
    says: 'Sizes: oblique strokes, extension lines off the thing, figures above the line.',
    states: [
      {
        state: 'rest',
        show: (
          <svg width="240" height="44" role="img" aria-label="2 420, 8 058">
            <Chain
              points={[
                [8, 40],
                [80, 40],
                [232, 40],
              ]}
              words={['2\u202f420', '8\u202f058']}
              off={22}
            />
          </svg>
        ),
      },
    ],
  },
  {
    name: 'Drawing',
    group: 'Drawing',
    says: 'A list of buttons under one name, to a screen reader.',
    states: [{ state: 'with one thing', show: <Module /> }],
  },
  {
    name: 'Hatch',
    group: 'Drawing',
    says: 'Red where nobody may enter, ink where something is cut, quiet where a place is idle.',
    states: [
      { state: 'closed', show: <Hatched ink="fails" /> },
      { state: 'cut', show: <Hatched ink="ink" /> },
      { state: 'idle', show: <Hatched ink="quiet" /> },
    ],
  },
  {
    name: 'NorthArrow',
    group: 'Drawing',
    says: 'North is up.',
    states: [
      {
        state: 'rest',
        show: (
          <svg width="30" height="46" aria-hidden="true">
            <NorthArrow x={15} y={1} />
          </svg>
        ),
      },
    ],
  },
  {
    name: 'Sideways',
    group: 'Drawing',
    says: 'A drawing wider than its sheet ends in the break line, so that nobody takes the cut for the end.',
    states: [{ state: 'goes on to the right', show: <WideDrawing /> }],
  },
  {
    name: 'Unread',
    group: 'Drawing',
    says: 'Lines a screen reader passes over: what they say stands in words elsewhere.',
    states: [
      {
        state: 'rest',
        show: (
          <svg width="120" height="20" aria-hidden="true">
            <Unread>
              <path className="pen25 centre-line" d="M2 10H118" />
            </Unread>
          </svg>
        ),
      },
    ],
  },
];
