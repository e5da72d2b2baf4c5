const { port1, port2 } = new MessageChannel();
port1.start();

/** After the messages that wait already; a timer would take four milliseconds. */
export function nextTask(): Promise<void> {
  return new Promise((done) => {
    port1.addEventListener('message', () => done(), { once: true });
    port2.postMessage(undefined);
  });
}
