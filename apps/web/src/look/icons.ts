/** Drawn in two pens: `o` what a thing is, `d` what is on it, `f` the part that is alive. */
export interface IconStroke {
  readonly pen: 'o' | 'd' | 'f';
  readonly d: string;
}

/** Signs on a grid of 24. */
export const icons = {
  site: [
    { pen: 'o', d: 'M2 21V10L13 8l8 4v9Z' },
    { pen: 'd', d: 'M7 17.5v-4h6v4Z' },
    { pen: 'd', d: 'M18 8V1.5M15.8 4L18 1.5L20.2 4' },
  ],
  roof: [
    { pen: 'o', d: 'M2 3h20v11h-9v7H2Z' },
    { pen: 'd', d: 'M2 3l5.5 5.5H17L22 3M22 14l-5-5.5M13 14L7.5 8.5V15.5L2 21M7.5 15.5L13 21' },
  ],
  array: [
    { pen: 'o', d: 'M1.8 13h4.8v8h-4.8ZM9.6 13h4.8v8h-4.8ZM17.4 13h4.8v8h-4.8Z' },
    { pen: 'd', d: 'M5.7 3h4.8v7h-4.8ZM13.5 3h4.8v7h-4.8Z' },
  ],
  trunk: [
    { pen: 'o', d: 'M1 17h22' },
    { pen: 'd', d: 'M5 17v-5M12 17v-5M19 17v-5M2.5 6h5v6h-5ZM9.5 6h5v6h-5ZM16.5 6h5v6h-5Z' },
  ],
  board: [
    { pen: 'o', d: 'M4 2v20' },
    { pen: 'd', d: 'M4 5h5l5-3M14 5h8M4 12h5l5-3M14 12h8M4 19h5l5-3M14 19h8' },
  ],
  backup: [{ pen: 'f', d: 'M2 22V9.6L12 2l10 7.6V22ZM9 12.5h6v6H9Z' }],
  energy: [
    { pen: 'o', d: 'M1 20h22' },
    { pen: 'd', d: 'M3 20C6 4 18 4 21 20' },
    { pen: 'f', d: 'M10.5 6.2h3v3h-3Z' },
    { pen: 'd', d: 'M7 20v-4M12 20v-7M17 20v-4' },
  ],
  checks: [
    { pen: 'o', d: 'M2.5 6.5l3 3 5-6M3 14.5l6.5 6.5M9.5 14.5L3 21' },
    { pen: 'd', d: 'M14 6.5h8M14 17.5h8' },
  ],
  kit: [
    { pen: 'o', d: 'M2.5 8h19v13h-19Z' },
    { pen: 'd', d: 'M2.5 8l3-5h13l3 5M12 3v5M9 12h6' },
  ],
  day: [
    { pen: 'o', d: 'M3 2v20' },
    { pen: 'd', d: 'M3 4h4M3 9h3M3 14h4M3 19h3M10 4h11v5H10Z' },
    { pen: 'f', d: 'M10 12.5h8v5h-8Z' },
  ],
  tests: [
    { pen: 'o', d: 'M1.5 18.5h21' },
    { pen: 'd', d: 'M3 18.5v3M8 18.5v3M13 18.5v3M18 18.5v3M6.5 10.5h11v8h-11Z' },
    { pen: 'f', d: 'M14 17.5l-3.4-9h6.8Z' },
  ],
  handover: [
    { pen: 'o', d: 'M4 2h11l5 5v15H4Z' },
    { pen: 'd', d: 'M15 2v5h5M7 18c2-4 3 2 5-1s3 1 5 0M7 10h9' },
  ],
  book: [
    { pen: 'o', d: 'M4 3h16v18H4Z' },
    { pen: 'd', d: 'M8 3v18M11 7.5h6M11 11h6M11 14.5h6' },
  ],
  scan: [
    { pen: 'o', d: 'M2 7V2.5h5M17 2.5h5V7M22 17v4.5h-5M7 21.5H2V17' },
    { pen: 'd', d: 'M6.5 7v10M9 7v10M14.5 7v10' },
    { pen: 'o', d: 'M11.7 7v10M17.3 7v10' },
  ],
  working: [
    { pen: 'o', d: 'M3 2.5h18v19H3Z' },
    { pen: 'o', d: 'M3 7.5h18' },
    { pen: 'd', d: 'M7 11.5h6M16.5 11.5h1M7 14.5h6M16.5 14.5h1M7 18h10.5' },
  ],
  measure: [
    { pen: 'o', d: 'M2.5 6v12M21.5 6v12' },
    { pen: 'd', d: 'M2.5 12h19' },
    { pen: 'o', d: 'M.8 13.7l3.4-3.4M19.8 13.7l3.4-3.4' },
  ],
  layers: [
    { pen: 'o', d: 'M12 2.5l10 5.5-10 5.5L2 8Z' },
    { pen: 'd', d: 'M2 12.3l10 5.4 10-5.4M2 16.6l10 5.4 10-5.4' },
  ],
  find: [{ pen: 'o', d: 'M10 3.2a6.8 6.8 0 1 0 .1 0ZM15 15l7 7' }],
  photo: [
    { pen: 'o', d: 'M2 6.5h20v14H2Z' },
    { pen: 'd', d: 'M7 6.5l1.5-3h7l1.5 3M12 9.2a4.4 4.4 0 1 0 .1 0Z' },
  ],
  note: [
    { pen: 'o', d: 'M4 20l1.2-5L16.5 3.7l3.8 3.8L9 18.8Z' },
    { pen: 'd', d: 'M13.8 6.4l3.8 3.8M13 21.5h9' },
  ],
  undo: [
    { pen: 'o', d: 'M8.5 3.5L3 9l5.5 5.5' },
    { pen: 'o', d: 'M3 9h11a6 6 0 0 1 0 12H8' },
  ],
  people: [
    { pen: 'o', d: 'M4 16a8 8 0 0 1 16 0' },
    { pen: 'o', d: 'M1.5 17h21' },
    { pen: 'd', d: 'M9.5 9V4.5h5V9M9.5 9v4M14.5 9v4' },
  ],
} as const satisfies Readonly<Record<string, readonly IconStroke[]>>;
