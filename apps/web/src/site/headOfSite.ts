import { howFar, type Plan } from '@eaveline/plan';
import type { Head } from '../frame/head.ts';
import { counted, sentence } from '../words/count.ts';

/** The nearest place the weather was taken at, and how many others count. */
export function placeWords({ name, places }: Pick<Plan['site']['climate'], 'name' | 'places'>): string {
  const [nearest, ...others] = places;
  if (nearest === undefined) return name;
  return others.length === 0 ? nearest.name : `${nearest.name} and ${others.length} more`;
}

/** `Monthly normals of Ballarat and 2 more, 21 km away` */
function weather({ climate }: Pick<Plan, 'site'>['site']): string {
  const what = climate.kind === 'weather file' ? 'A weather file' : 'Monthly normals';
  return `${what} of ${placeWords(climate)}, ${howFar(climate)}`;
}

/** Where it is, and how many facts are not known yet, whoever brings them; below it which weather, and how far away it was taken. */
export function headOfSite({ site }: Pick<Plan, 'site'>, place: string): Head {
  const { missing, survey } = site;
  const lacks =
    missing.length === 0
      ? 'Every fact is known'
      : `${sentence(counted(missing.length, 'fact'))} of the ${survey.wanted} this plan uses ${missing.length === 1 ? 'is' : 'are'} not known`;
  return { sentence: `${sentence(place)}. ${lacks}.`, quiet: `${weather(site)}. ${sentence(site.climate.quality)}.` };
}
