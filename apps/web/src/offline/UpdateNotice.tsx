import { useState } from 'react';
import { NewerApp } from './NewerApp.tsx';
import { useAppUpdate } from './useAppUpdate.ts';

/** Says that a newer app is ready, until it is taken or put off till the next start. */
export function UpdateNotice() {
  const update = useAppUpdate();
  const [later, setLater] = useState(false);
  if (update === 'none' || (update === 'ready' && later)) return null;
  return <NewerApp kind="newer app" onLater={() => setLater(true)} />;
}
