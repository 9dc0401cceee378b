import { type Job, kestrelRise } from '@eaveline/job';
import { expect, test } from 'vitest';
import { changeJob } from '../job/changeJob.ts';
import { closingOf } from './closingOf.ts';

const at = new Date('2026-05-15T04:20:00Z');

test('closed, a job in survey goes on to design and says who closed it and when', () => {
  const inSurvey: Job = { ...kestrelRise, state: 'survey' };
  const { job } = changeJob(inSurvey, closingOf(inSurvey, 'Nia', at)) as { job: Job };
  expect(job.state).toBe('design');
  expect(job.facts.surveyClosed).toEqual({ by: 'Nia', at: '2026-05-15T04:20:00.000Z' });
});

test('a job that is already booked stays where it is when its survey is closed again', () => {
  const booked: Job = { ...kestrelRise, state: 'booked' };
  const { job } = changeJob(booked, closingOf(booked, 'Nia', at)) as { job: Job };
  expect(job.state).toBe('booked');
});
