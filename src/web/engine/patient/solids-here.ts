import wasmUrl from 'manifold-3d/manifold.wasm?url';
import { loadSolids, type Solids } from '../../../base/index.ts';

let solids: Promise<Solids> | undefined;

/** The kernel of solids in this worker, loaded when it is first asked for. */
export function solidsHere(): Promise<Solids> {
  solids ??= loadSolids(wasmUrl);
  return solids;
}
