import type { Layer, Leaf, ResawPlan, ResawStack, Stretch } from './api.ts';

/**
 * What resawing leaves of a board. Flattened to T it gives n leaves of (T − (n − 1) k) / n as sawn; each loses what is planed off its faces,
 * sawn and outer ones apart, and what drying out of true takes. Backing and leaves, less the last planing, are the piece.
 *
 * Where the saw drifts by d off its line, a leaf may be d thinner at each of its sawn faces: `least…` says what is left then.
 */
export function resawStack(plan: ResawPlan): ResawStack {
  const { rough, flattening, kerf, leaves: count, backing, glued, lastPlaning } = plan;
  const flat = rough - flattening;
  const asSawn = (flat - (count - 1) * kerf) / count;
  const leaves = Array.from({ length: count }, (_, at) => leafAt(plan, at, asSawn));
  const thinnest = Math.min(...leaves.map(({ thickness }) => thickness));
  const leastThinnest = Math.min(...leaves.map(({ leastThickness }) => leastThickness));
  const last = lastPlaning.show + lastPlaning.back;
  return {
    plan,
    flat,
    asSawn,
    leaves,
    layers: layersOf(plan, leaves),
    thinnest,
    leastThinnest,
    glued: backing + glued * thinnest,
    reaches: backing + glued * thinnest - last,
    leastReaches: backing + glued * leastThinnest - last,
    showLeaf: thinnest - lastPlaning.show,
  };
}

function leafAt(plan: ResawPlan, at: number, asSawn: number): Leaf {
  const { flattening, kerf, leaves, planing, drying, drift } = plan;
  const from = flattening / 2 + at * (asSawn + kerf);
  const sawn: Stretch = { from, to: from + asSawn };
  const [above, below] = [at > 0, at < leaves - 1].map((isSawn) =>
    isSawn ? planing.sawn : planing.outer,
  ) as [number, number];
  const sawnFaces = Number(at > 0) + Number(at < leaves - 1);
  const ready = { from: sawn.from + above + drying / 2, to: sawn.to - below - drying / 2 };
  const thickness = ready.to - ready.from;
  return {
    number: at + 1,
    sawn,
    sawnFaces,
    ready,
    thickness,
    leastThickness: thickness - sawnFaces * drift,
  };
}

function layersOf({ rough, flattening, drying }: ResawPlan, leaves: readonly Leaf[]): readonly Layer[] {
  const half = flattening / 2;
  const layers: Layer[] = [{ kind: 'flattening', from: 0, to: half }];
  for (const { number: leaf, sawn, ready } of leaves) {
    const before = layers.at(-1)!.to;
    layers.push(
      { kind: 'kerf', from: before, to: sawn.from },
      { kind: 'planing', leaf, from: sawn.from, to: ready.from - drying / 2 },
      { kind: 'drying', leaf, from: ready.from - drying / 2, to: ready.from },
      { kind: 'leaf', leaf, from: ready.from, to: ready.to },
      { kind: 'drying', leaf, from: ready.to, to: ready.to + drying / 2 },
      { kind: 'planing', leaf, from: ready.to + drying / 2, to: sawn.to },
    );
  }
  layers.push({ kind: 'flattening', from: rough - half, to: rough });
  // The first leaf has no kerf above it, and what nothing is taken off has no layer.
  return layers.filter(({ from, to }) => to > from);
}
