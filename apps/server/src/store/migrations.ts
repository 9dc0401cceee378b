/**
 * The steps from an empty database to the present one. `pragma user_version` counts the steps taken.
 * A step that was ever shipped is never edited; the next change is a next step.
 */
export const migrations: readonly string[] = [
  `
  create table job (
    id         text    primary key,
    name       text    not null,
    region     text    not null,
    revision   integer not null,
    updated_ms integer not null,
    json       text    not null
  ) strict;

  -- every state a job was ever saved in, the present one too; outlives the job
  create table job_history (
    job_id   text    not null,
    revision integer not null,
    saved_ms integer not null,
    json     text    not null,
    primary key (job_id, revision)
  ) strict;
  `,
];
