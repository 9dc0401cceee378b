import type { ReactNode } from 'react';

export interface DrawingProps {
  readonly width: number;
  readonly height: number;
  /** Where the drawing's own nought lies, px from its left edge. */
  readonly left?: number;
  /** What a screen reader says before it reads the things of it. */
  readonly label: string;
  readonly children: ReactNode;
}

/** A drawing with things that can be selected: to a screen reader a list of buttons under one name. */
export function Drawing({ width, height, left = 0, label, children }: DrawingProps) {
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset cannot hold a drawing
    <svg width={width} height={height} viewBox={`${-left} 0 ${width} ${height}`} role="group" aria-label={label}>
      {children}
    </svg>
  );
}
