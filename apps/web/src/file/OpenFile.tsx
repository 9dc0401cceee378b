import { useId, useRef } from 'react';
import { Act } from '../parts/Act.tsx';
import { filesDesk } from './filesDesk.ts';

/** Opens job files from wherever the device keeps its files. */
export function OpenFile() {
  const input = useRef<HTMLInputElement>(null);
  const id = useId();
  return (
    <>
      <Act onPress={() => input.current?.click()}>Open a file</Act>
      <label className="out-of-sight" htmlFor={id}>
        Job files
      </label>
      <input
        id={id}
        ref={input}
        className="out-of-sight"
        type="file"
        accept=".json,application/json"
        multiple
        tabIndex={-1}
        onChange={({ target }) => {
          const files = [...(target.files ?? [])];
          target.value = ''; // the same file can be opened again once it is mended
          void filesDesk.bring(files);
        }}
      />
    </>
  );
}
