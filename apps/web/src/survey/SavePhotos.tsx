import { useEffect, useState } from 'react';
import { useJob } from '../job/JobContext.tsx';
import { saveText } from '../job/saveText.ts';
import { Act } from '../parts/Act.tsx';
import { lettered, photoPage } from './photoPage.ts';
import { type KeptPhoto, photos } from './photoStore.ts';
import { hourAt } from './seenWords.ts';

/** Every photograph of this job that lies on this phone, saved as one page that opens anywhere. */
export function SavePhotos() {
  const { job } = useJob();
  const [kept, setKept] = useState<readonly KeptPhoto[]>([]);
  useEffect(() => {
    let left = false;
    photos.ofJob(job.id).then(
      (found) => !left && setKept(found),
      () => undefined, // a browser without a database has none to save
    );
    return () => {
      left = true;
    };
  }, [job.id]);
  if (kept.length === 0) return null;
  async function save() {
    const page = await Promise.all(kept.map(async (photo) => ({ ...photo, source: await lettered(photo.picture) })));
    const when = (at: string) => hourAt(at, job.facts.site.zone, new Date(0));
    saveText(`${job.id}-photographs.html`, photoPage(job.name, page, when), 'text/html');
  }
  return <Act onPress={() => void save()}>Save the photographs: {kept.length}</Act>;
}
