import { Unread } from './Unread.tsx';

export interface NorthArrowProps {
  readonly x: number;
  readonly y: number;
}

/** North is up. */
export function NorthArrow({ x, y }: NorthArrowProps) {
  return (
    <Unread transform={`translate(${x} ${y})`}>
      <path className="pen35" d="M0 30V6" />
      <path className="on-ink" d="M0 0 5 14 0 11-5 14Z" />
      <text className="bold" y="42" textAnchor="middle">
        N
      </text>
    </Unread>
  );
}
