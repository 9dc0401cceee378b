import { type ComponentType, lazy, type ReactNode, useState } from 'react';

/** A page that is fetched by itself. */
export interface Part<P> {
  fetch(): Promise<void>;
  /** The page, where it has been fetched; otherwise one that has it fetched. */
  page(): ComponentType<P>;
}

export function makePart<P extends object>(load: () => Promise<ComponentType<P>>): Part<P> {
  let there: ComponentType<P> | undefined;
  const fetch = async () => {
    there = await load();
  };
  const fetched = lazy(async () => ({ default: await load() }));
  return { fetch, page: () => there ?? fetched };
}

/** A part on the screen. One fetched before stands at once, without a moment of nothing. */
export function PartPage<P extends object>({ part, props }: { readonly part: Part<P>; readonly props: P }): ReactNode {
  // held for as long as it is shown: one put in the place of the other would begin anew
  const [Shown] = useState<ComponentType<P>>(() => part.page());
  return <Shown {...props} />;
}
