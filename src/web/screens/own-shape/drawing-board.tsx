import { useState } from 'preact/hooks';
import type { ScreenScene } from '../../../drawing/index.ts';
import {
  directionAt,
  type Edge,
  edgesOfLoop,
  matrix3d,
  projectTwice,
  type Snap,
  snapPoint,
  type Vec,
  writeSvgPath,
} from '../../../geometry/index.ts';
import { type OnScreen, SceneView } from '../../drawing/scene-view.tsx';
import { words } from '../../words/en.ts';
import { addPoint, type Drawn, drawn } from './drawn.ts';
import { markCorner, type Photograph, photograph } from './photograph.ts';
import { BOARD, boxRound, pictureBox, planeBox } from './shown-box.ts';

const said = words.ownShape;

/** How near, px, a point snaps: what a finger covers a good part of. */
const REACH = 10;

/** Where outlines are drawn: over a photograph, or on bare paper. Pictures are marked before they are drawn over. */
export function DrawingBoard() {
  const photo = photograph.value;
  const [pointer, setPointer] = useState<Snap>();
  const isMarking = photo !== undefined && photo.made === undefined;
  const now = drawn.value;
  const edges = edgesOf(now);
  const scene: ScreenScene = {
    box: isMarking ? pictureBox(photo) : boxRound(planeBox(photo), [...edges.closed, ...edges.open]),
    lines: [],
    texts: [],
  };
  const snapAt = (event: { clientX: number; clientY: number }, screen: OnScreen): Snap => {
    const { x, y } = screen.at({ x: event.clientX, y: event.clientY });
    if (isMarking) return { at: { x, y }, held: [] };
    const before = edges.open.at(-1);
    return snapPoint(
      { x, y: -y },
      {
        points: pointsOf(now),
        edges: edges.closed,
        reach: REACH / screen.zoom,
        ...(before === undefined || now.waiting.length > 0 ? {} : { arriving: directionAt(before, 1) }),
      },
    );
  };
  return (
    <SceneView
      key={isMarking ? 'marking' : 'drawing'}
      scene={scene}
      label={isMarking ? said.markHere : said.drawHere}
      overlay={(screen) => (photo === undefined ? null : <Underlay photo={photo} screen={screen} />)}
    >
      {(zoom, screen) => (
        <g class="own-drawing">
          {/* biome-ignore lint/a11y/noStaticElementInteractions: the fields beside the drawing do the same by keys. */}
          <rect
            class="ground"
            {...scene.box}
            onPointerMove={(event) => setPointer(snapAt(event, screen))}
            onPointerLeave={() => setPointer(undefined)}
            onClick={(event) => {
              const { at } = snapAt(event, screen);
              if (isMarking) markCorner(at);
              else addPoint(at);
            }}
          />
          {isMarking
            ? photo.corners.map((corner, at) => (
                <Mark key={`${corner.x} ${corner.y}`} at={corner} zoom={zoom} name={`${at + 1}`} />
              ))
            : null}
          {photo === undefined && edges.closed.length + edges.open.length === 0 && now.start === undefined ? (
            <text class="invites" x={BOARD.width / 2} y={-BOARD.height / 2} font-size={15 / zoom}>
              {said.begin}
            </text>
          ) : null}
          {isMarking ? null : <DrawnLines now={now} edges={edges} zoom={zoom} pointer={pointer} />}
        </g>
      )}
    </SceneView>
  );
}

interface DrawnEdges {
  readonly closed: readonly Edge[];
  readonly open: readonly Edge[];
}

function edgesOf({ closed, start, strokes }: Drawn): DrawnEdges {
  return {
    closed: closed.flatMap(edgesOfLoop),
    open: start === undefined ? [] : edgesOfLoop({ start, strokes }),
  };
}

function pointsOf({ start, strokes, waiting }: Drawn): readonly Vec[] {
  return start === undefined ? [] : [start, ...strokes.map(({ to }) => to), ...waiting];
}

interface DrawnLinesProps {
  readonly now: Drawn;
  readonly edges: DrawnEdges;
  readonly zoom: number;
  readonly pointer: Snap | undefined;
}

function DrawnLines({ now, edges, zoom, pointer }: DrawnLinesProps) {
  const points = pointsOf(now);
  const last = points.at(-1);
  return (
    <>
      {now.closed.map((loop, at) => (
        <path key={`${at} closed`} class="outline" d={writeSvgPath(edgesOfLoop(loop), true)} />
      ))}
      <path class="outline open" d={writeSvgPath(edges.open, false)} />
      {points.map(({ x, y }) => (
        <circle key={`${x} ${y}`} cx={x} cy={-y} r={3.5 / zoom} />
      ))}
      {pointer === undefined ? null : (
        <>
          {pointer.held.map(({ by, from }) => (
            <line key={by} class="guide" x1={from.x} y1={-from.y} x2={pointer.at.x} y2={-pointer.at.y} />
          ))}
          {last === undefined ? null : (
            <line class="next" x1={last.x} y1={-last.y} x2={pointer.at.x} y2={-pointer.at.y} />
          )}
          <circle class="pointer" cx={pointer.at.x} cy={-pointer.at.y} r={5 / zoom} />
        </>
      )}
    </>
  );
}

function Mark({ at, zoom, name }: { readonly at: Vec; readonly zoom: number; readonly name: string }) {
  return (
    <g class="sheet-corner">
      <circle cx={at.x} cy={at.y} r={7 / zoom} />
      <text x={at.x + 9 / zoom} y={at.y - 9 / zoom} font-size={16 / zoom}>
        {name}
      </text>
    </g>
  );
}

/** The picture as it was taken, or turned true over the drawing's millimetres. */
function Underlay({ photo, screen }: { readonly photo: Photograph; readonly screen: OnScreen }) {
  const origin = screen.place({ x: 0, y: 0 });
  const { zoom } = screen;
  // Over the drawing: mm, y up, to px, y down.
  const toScreen = [
    zoom,
    0,
    origin.x,
    0,
    photo.made === undefined ? zoom : -zoom,
    origin.y,
    0,
    0,
    1,
  ] as const;
  const whole = photo.made === undefined ? toScreen : projectTwice(photo.made.toPlane, toScreen);
  return (
    <img
      class="underlay"
      src={photo.url}
      alt=""
      width={photo.width}
      height={photo.height}
      style={{ transform: `matrix3d(${matrix3d(whole).join(',')})` }}
    />
  );
}
