import type { ScreenScene } from '../../../drawing/index.ts';
import { SceneView } from '../../drawing/scene-view.tsx';
import type { ShownJoint } from '../../engine/answers/joints.ts';
import { useAnswer } from '../../engine/use-answer.ts';
import { selection } from '../../state/selection.ts';
import { words } from '../../words/en.ts';
import { BookBlock } from '../book/book-block.tsx';

const said = words.joints;

/** Every kind of joint: cut open and marked out on its parts, with the figures to mark it by. */
export function JointsScreen() {
  const joints = useAnswer('joints');
  if (joints === undefined) return <p class="waiting">{words.loading}</p>;
  if (joints === 'parts alone') return <p class="waiting">{said.alone}</p>;
  const shown = joints.find(({ name }) => name === selection.value.joint) ?? joints[0];
  if (shown === undefined) return <p class="waiting">{said.none}</p>;
  return (
    <div class="joints-screen">
      <JointList joints={joints} shown={shown} />
      <JointShown joint={shown} />
    </div>
  );
}

function JointList({
  joints,
  shown,
}: {
  readonly joints: readonly ShownJoint[];
  readonly shown: ShownJoint;
}) {
  const findings = useAnswer('findings') ?? [];
  return (
    <nav class="joint-list" aria-label={said.list}>
      <ul>
        {joints.map(({ name, label, count }) => {
          const own = findings.filter(({ joint }) => joint?.split(' ').includes(name));
          const gravest = own[0]?.severity;
          return (
            <li key={name}>
              <button
                type="button"
                aria-current={name === shown.name}
                onClick={() => {
                  selection.value = { joint: name };
                }}
              >
                {label} <small>{said.count(count)}</small>
                {gravest === undefined ? null : (
                  <span class={`severity ${gravest}`}>{words.notes.severity[gravest]}</span>
                )}
              </button>
            </li>
          );
        })}
      </ul>
    </nav>
  );
}

function JointShown({ joint }: { readonly joint: ShownJoint }) {
  const { name, label, count, between, blocks } = joint;
  const drawing = blocks.find((block) => block.kind === 'drawing');
  return (
    <section class="joint" aria-label={label}>
      {drawing?.kind !== 'drawing' ? null : (
        <div class="joint-drawing">
          <div style={roomFor(drawing.scene)}>
            <SceneView key={name} scene={drawing.scene} label={said.drawing(label)} />
          </div>
        </div>
      )}
      <div class="joint-words">
        <h2>
          {label} <small>{said.count(count)}</small>
        </h2>
        {blocks.map((block, at) => (block === drawing ? null : <BookBlock key={at} block={block} />))}
        <p class="hint">
          {said.between}: {between.join(', ')}
        </p>
      </div>
    </section>
  );
}

/** px that the smallest lettering is high at least, and what stands round the drawing. */
const LEAST = 11;
const ROUND = { width: 44, height: 88 };

/** Room in which all of a drawing can be read: as wide as its column, and wider where its lettering asks for it. */
function roomFor({ box, texts }: ScreenScene) {
  const smallest = Math.min(...texts.map(({ size }) => size));
  const zoom = Number.isFinite(smallest) ? LEAST / smallest : 1;
  return {
    minWidth: `${Math.ceil(box.width * zoom) + ROUND.width}px`,
    height: `${Math.ceil(box.height * zoom) + ROUND.height}px`,
  };
}
