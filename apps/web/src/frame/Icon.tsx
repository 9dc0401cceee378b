import { icons } from '../look/icons.ts';
import styles from './Icon.module.css';

export type IconName = keyof typeof icons;

export interface IconProps {
  readonly name: IconName;
}

/** A sign in two pens; always with its word beside it. */
export function Icon({ name }: IconProps) {
  return (
    <svg className={styles.icon} width="24" height="24" viewBox="0 0 24 24" aria-hidden="true">
      {icons[name].map(({ pen, d }) => (
        <path key={d} className={styles[pen]} d={d} fillRule="evenodd" />
      ))}
    </svg>
  );
}
