export interface HatchProps {
  readonly id: string;
  readonly ink?: 'fails' | 'ink' | 'quiet';
  readonly gap?: number;
}

/** Hatching at 45°: red where nobody may enter, ink where something is cut or idle. */
export function Hatch({ id, ink = 'fails', gap = 6 }: HatchProps) {
  const colour = { fails: 'var(--ink-fails)', ink: 'var(--ink)', quiet: 'var(--ink-quiet)' }[ink];
  return (
    <pattern id={id} width={gap} height={gap} patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <path d={`M0 0V${gap}`} stroke={colour} strokeWidth="1" />
    </pattern>
  );
}
