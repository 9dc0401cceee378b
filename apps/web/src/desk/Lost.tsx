import { Plainly } from './Plainly.tsx';

/** An address that leads to no sheet. */
export function Lost() {
  return <Plainly sentence="No sheet has this address." lines={['Sheets are numbered 01 to 12.']} />;
}
