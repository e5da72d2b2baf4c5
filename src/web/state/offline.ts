import { signal } from '@preact/signals';

/** Has a newer version of the page been fetched, ready to be used? */
export const newerIsHere = signal(false);

let waiting: ServiceWorker | null = null;

/** Lets the page work without a network from the second visit on. In a browser that cannot, it is a page like any other. */
export async function keepForOffline(): Promise<void> {
  if (!('serviceWorker' in navigator) || !import.meta.env.PROD) return;
  const registration = await navigator.serviceWorker.register('./service-worker.js').catch(() => undefined);
  if (registration === undefined) return;
  const look = (): void => {
    waiting = registration.waiting;
    newerIsHere.value = waiting !== null && navigator.serviceWorker.controller !== null;
  };
  look();
  registration.addEventListener('updatefound', () => {
    registration.installing?.addEventListener('statechange', look);
  });
}

/** Goes over to the newer version; what is in hand is kept already. */
export function takeNewer(): void {
  navigator.serviceWorker.addEventListener('controllerchange', () => location.reload(), { once: true });
  waiting?.postMessage('take over');
}
