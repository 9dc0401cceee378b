import type { ReactNode } from 'react';

export interface UnreadProps {
  readonly children: ReactNode;
  readonly transform?: string;
}

/** Lines and lettering of a drawing that a screen reader passes over: what they say stands in words elsewhere. */
export function Unread({ children, transform }: UnreadProps) {
  return (
    // biome-ignore lint/a11y/noAriaHiddenOnFocusable: a group of lines takes no focus
    <g aria-hidden="true" transform={transform}>
      {children}
    </g>
  );
}
