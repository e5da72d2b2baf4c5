import {
  type Frame,
  type Region,
  type Similarity,
  STAY,
  scale3,
  transformPoint,
  transformRegion,
  type Vec3,
} from '../../geometry/index.ts';
import type { JointWork } from './api.ts';

const TURN_OVER: Similarity = { ...STAY, mirrored: true };

const flip = (v: Vec3): Vec3 => ({ ...v, x: -v.x });

/** The mirror image of a frame, its x axis turned round so that it stays right-handed. */
const flipFrame = ({ origin, x, y, z }: Frame): Frame => ({
  origin: flip(origin),
  x: scale3(flip(x), -1),
  y: flip(y),
  z: flip(z),
});

const flipRegion = (region: Region): Region => transformRegion(region, TURN_OVER);

/** The joints of the part turned over about its y axis: of its other hand. */
export function mirrorWork(work: JointWork): JointWork {
  switch (work.kind) {
    case 'mortise':
    case 'hole':
    case 'tenon':
      return {
        ...work,
        own: flipFrame(work.own),
        outline: flipRegion(work.outline),
        measures: work.measures.map((measure) => ({ ...measure, away: flip(measure.away) })),
      };
    case 'pocket':
      return {
        ...work,
        region: work.region.map(flipRegion),
        corners: work.corners.map((corner) => ({ ...corner, at: transformPoint(corner.at, TURN_OVER) })),
      };
    default:
      return work satisfies never;
  }
}
