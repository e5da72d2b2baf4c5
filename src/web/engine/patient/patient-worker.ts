import '../no-eval.ts';
import { type FromPatient, PATIENT, type ToPatient } from './deeds.ts';

interface Scope {
  postMessage(message: FromPatient): void;
  addEventListener(kind: 'message', hear: (event: MessageEvent<ToPatient>) => void): void;
}
const scope = self as unknown as Scope;

scope.addEventListener('message', ({ data }) => void doOnce(data));

async function doOnce({ id, deed, input }: ToPatient): Promise<void> {
  try {
    const run = PATIENT[deed] as (input: unknown, tell: (share: number) => void) => unknown;
    scope.postMessage({ id, outcome: await run(input, (share) => scope.postMessage({ id, share })) });
  } catch (cause) {
    scope.postMessage({ id, fault: cause instanceof Error ? cause.message : String(cause) });
  }
}
