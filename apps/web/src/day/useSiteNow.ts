import { useEffect, useState } from 'react';
import { type SiteNow, siteNow } from './siteNow.ts';

const EVERY_MS = 60_000;

/** Where the clock of the place stands in the days of the job, minute by minute; undefined outside them. */
export function useSiteNow(job: Parameters<typeof siteNow>[0]): SiteNow | undefined {
  const [instant, setInstant] = useState(() => new Date());
  useEffect(() => {
    const timer = setInterval(() => setInstant(new Date()), EVERY_MS);
    return () => clearInterval(timer);
  }, []);
  return siteNow(job, instant);
}
