const PARTS: Readonly<Record<string, string>> = {
  facts: 'the facts of the job',
  choices: 'the choices of the job',
  records: 'the records of the job',
};

/** Where a figure comes from, in words: a path into the job, `facts.loads.circuits`, is said by the part it lies in. */
export function sourceWords(source: string): string {
  const part = /^([a-z]+)(?:\.[A-Za-z]+)+$/.exec(source)?.[1];
  return (part === undefined ? undefined : PARTS[part]) ?? source;
}
