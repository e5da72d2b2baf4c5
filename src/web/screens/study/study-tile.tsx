import { useEffect, useRef, useState } from 'preact/hooks';
import type { Design, SmallSide } from '../../../design/index.ts';
import type { PatientOutcome } from '../../engine/patient/deeds.ts';
import { patientDo } from '../../engine/patient/patient-do.ts';
import { words } from '../../words/en.ts';

const said = words.study;

interface StudyTileProps {
  readonly design: Design;
  readonly side: SmallSide;
  readonly parameters: Readonly<Record<string, string | number>>;
  readonly name: string;
  /** The design is like this already. */
  readonly isNow: boolean;
  readonly onTake: () => void;
}

/** Share of its size left round a picture. */
const AIR = 0.05;

/** One small base of the wall; it is computed when it comes into sight. */
export function StudyTile({ design, side, parameters, name, isNow, onTake }: StudyTileProps) {
  const own = useRef<HTMLLIElement>(null);
  const [isSeen, setSeen] = useState(false);
  const [look, setLook] = useState<PatientOutcome<'studyCell'>>();
  useEffect(() => {
    const watch = new IntersectionObserver((entries) => {
      if (entries.some(({ isIntersecting }) => isIntersecting)) setSeen(true);
    });
    watch.observe(own.current!);
    return () => watch.disconnect();
  }, []);
  useEffect(() => {
    if (!isSeen) return;
    let isLate = false;
    void patientDo('studyCell', { design, side, parameters }).then((found) => {
      if (!isLate) setLook(found);
    });
    return () => {
      isLate = true;
    };
  }, [isSeen, design, side]);
  const told =
    look === undefined ? words.reckoning : look.kind === 'made' ? findingWords(look.findings) : look.why;
  return (
    <li ref={own} class={`study-tile ${isNow ? 'now' : ''} ${look?.kind ?? 'waiting'}`}>
      <button
        type="button"
        aria-current={isNow}
        aria-label={said.take(name, told)}
        onClick={onTake}
        disabled={look?.kind !== 'made'}
      >
        {look?.kind === 'made' ? (
          <svg viewBox={boxOf(look.scene.box)} aria-hidden="true">
            {look.scene.lines.map(({ data }) => (
              <path key={data} d={data} />
            ))}
          </svg>
        ) : (
          <span class="blank" />
        )}
        <strong>{name}</strong>
        <span class={look?.kind === 'made' && look.findings.stop > 0 ? 'stops' : ''}>{told}</span>
      </button>
    </li>
  );
}

function boxOf({
  x,
  y,
  width,
  height,
}: {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}): string {
  const air = AIR * Math.max(width, height);
  return `${x - air} ${y - air} ${width + 2 * air} ${height + 2 * air}`;
}

function findingWords({ stop, caution }: { readonly stop: number; readonly caution: number }): string {
  const { count } = words.notes;
  const all = [...(stop > 0 ? [count.stop(stop)] : []), ...(caution > 0 ? [count.caution(caution)] : [])];
  return all.length === 0 ? said.sound : all.join(', ');
}
