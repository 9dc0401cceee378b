import type { JobServer, ListedJob, ServedJob } from '../job/jobServer.ts';

/** What the server has of a job; undefined where its list does not name it. Nothing is asked for that is not there. */
export async function servedOf(
  server: JobServer,
  id: string,
): Promise<{ readonly listed: ListedJob; readonly served: ServedJob } | undefined> {
  const listed = (await server.list()).find((each) => each.id === id);
  const served = listed && (await server.get(id));
  return listed && served && { listed, served };
}
