/** What one tab tells the others: a design's log has grown or is gone for good, or the list has changed. */
export type TabNews = { readonly kind: 'log' | 'gone'; readonly design: string } | { readonly kind: 'list' };

const channel = new BroadcastChannel('legwright');

export function tellTabs(news: TabNews): void {
  channel.postMessage(news);
}

export function onTabNews(hear: (news: TabNews) => void): void {
  channel.addEventListener('message', ({ data }: MessageEvent<TabNews>) => hear(data));
}
