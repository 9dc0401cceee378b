import { given, type Working } from '../working.ts';

/** Latitude and longitude of the site, with the two decimals sheet 01 letters them in: a kilometre or so. */
export function givenPlace(site: { readonly latitudeDeg: number; readonly longitudeDeg: number }): Working[] {
  return [
    { ...given('latitude', site.latitudeDeg, '°', 'facts.site.latitudeDeg'), decimals: 2 },
    { ...given('longitude', site.longitudeDeg, '°', 'facts.site.longitudeDeg'), decimals: 2 },
  ];
}
