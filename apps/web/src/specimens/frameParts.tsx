import { House } from '../frame/House.tsx';
import { Icon, type IconName } from '../frame/Icon.tsx';
import { Papers } from '../frame/Papers.tsx';
import { TitleBlock } from '../frame/TitleBlock.tsx';
import { icons } from '../look/icons.ts';
import styles from './Specimens.module.css';
import type { Specimen } from './specimen.ts';

const nothing = () => {};

/** Pieces of the frame. The sheet this page is drawn on is the frame itself, with its zones. */
export const frameParts: readonly Specimen[] = [
  {
    name: 'Icon',
    group: 'Frame',
    says: 'What a thing is in the 2 px pen, what is on it in 1.25; always with its word.',
    states: [
      {
        state: 'all',
        show: (
          <ul className={styles.icons}>
            {(Object.keys(icons) as IconName[]).map((name) => (
              <li key={name}>
                <Icon name={name} />
                {name}
              </li>
            ))}
          </ul>
        ),
      },
    ],
  },
  {
    name: 'House',
    group: 'Frame',
    says: 'The sign, the name, the way to the Book.',
    states: [
      { state: 'in a job', show: <House inBook={false} /> },
      { state: 'in the Book', show: <House inBook /> },
    ],
  },
  {
    name: 'Papers',
    group: 'Frame',
    says: 'Which paper is laid: D lays the next.',
    states: [{ state: 'rest', show: <Papers onKeys={nothing} /> }],
  },
  {
    name: 'TitleBlock',
    group: 'Frame',
    says: 'It takes the place of a header bar.',
    wide: true,
    states: [
      {
        state: 'signed',
        show: (
          <TitleBlock
            cells={[
              { what: 'job', says: 'Kestrel Rise', strong: true },
              { what: 'sheet', says: '04 Trunks', strong: true },
              { what: 'worked out', says: '09:41' },
              { what: 'checked', says: 'Nia, 12 May 2026' },
            ]}
          />
        ),
      },
      {
        state: 'changed after the signature',
        show: (
          <TitleBlock
            cells={[
              { what: 'job', says: 'Kestrel Rise', strong: true },
              { what: 'worked out', says: '09:41, before' },
              { what: 'checked', says: 'Nia, for an earlier design' },
            ]}
          />
        ),
      },
    ],
  },
];
