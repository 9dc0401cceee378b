import type { Job } from '@eaveline/job';
import { drawingsOf, surveySheets, svgOf, svgStyle } from '@eaveline/papers';
import { useEffect, useMemo, useRef } from 'react';
import styles from './PaperForm.module.css';

export interface PaperFormProps {
  readonly job: Job;
}

/** The survey form as it leaves the printer: the pages themselves, drawn on this device. */
export function PaperForm({ job }: PaperFormProps) {
  const pages = useMemo(() => {
    const sheets = surveySheets({ job, drawnAt: new Date().toISOString() });
    return drawingsOf(sheets).map((drawing) => ({ title: drawing.title, svg: svgOf(drawing, { style: 'none' }) }));
  }, [job]);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: nothing else on it can be reached, and it has to be scrolled by key
    <section className={styles.pages} data-form aria-label="The form" tabIndex={0}>
      {pages.map(({ title, svg }) => (
        <Page key={title} svg={svg} />
      ))}
    </section>
  );
}

/** One page, out of reach of the styles that drawings on a sheet of the screen have. */
function Page({ svg }: { readonly svg: string }) {
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (place.current === null) return;
    const root = place.current.shadowRoot ?? place.current.attachShadow({ mode: 'open' });
    // our own pen wrote it, every word escaped
    root.innerHTML = `<style>svg{display:block;width:100%;height:auto}${svgStyle}</style>${svg}`;
  }, [svg]);
  return <div ref={place} className={styles.page} />;
}
