import type { KeptJob, StoredChange } from '@eaveline/sync/store';

/** What one page tells the others on the same device, once it is kept. */
export interface PageNews {
  readonly changes: readonly StoredChange[];
  readonly kept: KeptJob;
}

/** Between the pages of one device that show one job. */
export interface PageChannel {
  tell(news: PageNews): void;
  onNews(listener: (news: PageNews) => void): void;
  close(): void;
}

/** A channel of the browser's own. Where it has none, a page hears of the others when it is opened again. */
export function browserChannel(jobId: string): PageChannel {
  if (typeof BroadcastChannel === 'undefined') return { tell() {}, onNews() {}, close() {} };
  const channel = new BroadcastChannel(`eaveline job ${jobId}`);
  return {
    tell: (news) => channel.postMessage(news),
    onNews(listener) {
      channel.onmessage = ({ data }: MessageEvent<PageNews>) => listener(data);
    },
    close: () => channel.close(),
  };
}
