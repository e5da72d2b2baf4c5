import type { Result } from '../../core/index.ts';
import {
  circleOutline,
  distance,
  type Edge,
  type EdgeRole,
  locate,
  middle,
  type Outline,
  POSITION_TOLERANCE,
  reverseEdge,
  slotOutline,
  type Vec,
} from '../../geometry/index.ts';
import type { NamedCorner } from '../api.ts';
import { type Desk, openDesk } from '../evaluate/desk.ts';
import type { Sheet } from '../evaluate/sheet.ts';
import { showPoint } from '../evaluate/show.ts';
import type { OpeningSpec } from '../schema/construction.ts';
import type { Place } from '../source/place.ts';
import type { AssembledOutline } from './assemble-outline.ts';

/** An opening of a form: its loop runs clockwise, and its edges carry its name. */
export interface MadeOpening {
  readonly name: string;
  readonly label: string;
  readonly loop: Outline;
  readonly plunge: Vec;
  readonly corners: readonly NamedCorner[];
  readonly place: Place;
}

interface Drawn {
  /** Anticlockwise. */
  readonly outline: Outline;
  readonly corners: readonly NamedCorner[];
  readonly place: Place;
  /** Where the cutter goes down unless the form says otherwise. */
  readonly plunge: Vec;
}

/** An opening; `absent` when its condition does not hold. */
export function makeOpening(
  name: string,
  outlineOf: (name: string) => Result<AssembledOutline>,
  sheet: Sheet,
): Result<MadeOpening | 'absent'> {
  const desk = openDesk(sheet);
  const spec = sheet.form.data.openings![name]!;
  const holds = desk.holds(spec.when);
  if (holds === undefined) return desk.close<MadeOpening>(undefined);
  if (!holds) return desk.close<MadeOpening | 'absent'>('absent');
  const drawn = draw(spec, outlineOf, desk);
  const plunge = spec.plunge === undefined ? drawn?.plunge : desk.point(spec.plunge);
  if (drawn === undefined || plunge === undefined) return desk.close<MadeOpening>(undefined);
  if (locate([{ outer: drawn.outline, holes: [] }], plunge) !== 'inside') {
    const message = `the plunge of ${name}, ${showPoint(plunge, sheet.style)}, is not in its waste`;
    desk.refuse(
      spec.plunge?.source.place ?? drawn.place,
      'form.plunge',
      message,
      'a point inside the opening',
    );
  }
  const prefixed = (edge: Edge): Edge => ({ ...edge, tag: { ...edge.tag, id: `${name}.${edge.tag.id}` } });
  const loop = { edges: drawn.outline.edges.toReversed().map(reverseEdge).map(prefixed) };
  const corners = drawn.corners.map((corner) => ({ ...corner, name: `${name}.${corner.name}` }));
  return desk.close({ name, label: spec.label, loop, plunge, corners, place: drawn.place });
}

function draw(
  spec: OpeningSpec,
  outlineOf: (name: string) => Result<AssembledOutline>,
  desk: Desk,
): Drawn | undefined {
  if ('outline' in spec) {
    const made = desk.take(outlineOf(spec.outline.text));
    return made && { ...made, place: spec.outline.place, plunge: made.outline.edges[0]!.from };
  }
  const role = spec.role ?? 'routed';
  return 'circle' in spec ? drawCircle(spec.circle, role, desk) : drawSlot(spec.slot, role, desk);
}

function drawCircle(
  spec: Extract<OpeningSpec, { circle: unknown }>['circle'],
  role: EdgeRole,
  desk: Desk,
): Drawn | undefined {
  const centre = desk.point(spec.centre);
  const size =
    spec.diameter === undefined
      ? desk.size(spec.radius!, 'a radius')
      : desk.size(spec.diameter, 'a diameter');
  if (centre === undefined || size === undefined) return undefined;
  const radius = spec.diameter === undefined ? size : size / 2;
  const outline = circleOutline(centre, radius, { id: 'rim', role });
  return { outline, corners: [], place: spec.centre.source.place, plunge: centre };
}

function drawSlot(
  spec: Extract<OpeningSpec, { slot: unknown }>['slot'],
  role: EdgeRole,
  desk: Desk,
): Drawn | undefined {
  const ends = desk.points([spec.from, spec.to]);
  const width = desk.size(spec.width, 'a width');
  if (ends === undefined || width === undefined) return undefined;
  const [from, to] = ends;
  const { place } = spec.from.source;
  if (distance(from, to) <= POSITION_TOLERANCE) {
    return desk.refuse(
      place,
      'form.slot',
      'a slot runs between two places, and these are one',
      'two places apart, or a circle',
    );
  }
  const names = ['right', 'end', 'left', 'start'];
  const edges = slotOutline(from, to, width / 2, { id: 'side', role }).edges;
  const outline = {
    edges: edges.map((edge, index): Edge => ({ ...edge, tag: { id: names[index]!, role } })),
  };
  return { outline, corners: [], place, plunge: middle(from, to) };
}
