/** ms from an input until the page shows what follows from it. */
export interface Shown {
  /** The drawing has changed, and its frame is out. */
  readonly drawn: number;
  /** Checks and the count of sheets are up to date, on the page. */
  readonly ready: number;
  /** The same, and the frame with it is out. */
  readonly settled: number;
}

interface Watching {
  watched?: Promise<Shown>;
}

/**
 * Begins to wait, in the page, for the next key and what follows from it. To be given to `page.evaluate`: it
 * may name nothing outside itself.
 */
export function watchNextInput(): void {
  const board = document.querySelector('.board')!;
  const notes = document.querySelector('.notes')!;
  // The frame in which a change is seen is out once a message sent from its callback arrives.
  const frameOut = (): Promise<number> =>
    new Promise((done) => {
      requestAnimationFrame(() => {
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = () => done(performance.now());
        port2.postMessage(undefined);
      });
    });
  (globalThis as Watching).watched = new Promise((done) => {
    const begin = (event: KeyboardEvent): void => {
      if (!/^(Enter|Arrow)/.test(event.key)) return;
      removeEventListener('keydown', begin, true);
      const began = event.timeStamp;
      let drawn: Promise<number> | undefined;
      let reckons = false;
      const watcher = new MutationObserver((changes) => {
        const isDrawing = changes.some(({ target }) => board.contains(target) && target.nodeName === 'path');
        if (isDrawing) drawn ??= frameOut();
        if (notes.classList.contains('reckoning')) reckons = true;
        // What was foreseen is all there with the drawing: nothing is reckoned any more.
        else if (reckons || isDrawing) {
          watcher.disconnect();
          const ready = performance.now();
          void frameOut().then(async (settled) => {
            done({
              drawn: (await (drawn ?? settled)) - began,
              ready: ready - began,
              settled: settled - began,
            });
          });
        }
      });
      watcher.observe(document.body, { subtree: true, attributes: true, childList: true });
    };
    addEventListener('keydown', begin, true);
  });
}
