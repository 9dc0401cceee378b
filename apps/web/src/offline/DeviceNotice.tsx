import { useDeviceState } from '../job/deviceStore.ts';
import { NewerApp } from './NewerApp.tsx';

/** Says that another version of the app has the jobs of this device. */
export function DeviceNotice() {
  const state = useDeviceState();
  return state === 'ours' ? null : <NewerApp kind={state} />;
}
