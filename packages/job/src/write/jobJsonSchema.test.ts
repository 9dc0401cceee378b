import { expect, test } from 'vitest';
import { jobJsonSchema } from './jobJsonSchema.ts';

test('the published schema is draft 2020-12, asks for what a job cannot do without, and lets fields be added', () => {
  const schema = JSON.parse(JSON.stringify(jobJsonSchema()));
  expect(schema.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
  expect(schema.title).toBe('Eaveline job, version 1');
  expect(schema.required).toEqual(['format', 'version', 'id', 'name', 'firm', 'facts', 'choices']);
  expect(schema.additionalProperties).not.toBe(false);
  const { site } = schema.properties.facts.properties;
  expect(site.required).toEqual(['address', 'latitudeDeg', 'longitudeDeg', 'zone']);
  expect(site.properties.latitudeDeg).toMatchObject({ type: 'number', minimum: -90, maximum: 90 });
});
