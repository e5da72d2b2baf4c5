import { useState } from 'preact/hooks';
import type { Finding, Problem } from '../../core/index.ts';
import { problems, progress } from '../engine/engine.ts';
import { useAnswer } from '../engine/use-answer.ts';
import { cures, foreseeCure, takeCure } from '../state/cures.ts';
import { keyOfFinding } from '../state/key-of-finding.ts';
import { selection } from '../state/selection.ts';
import { parameterOf, seekParameter, showFinding } from '../state/show-finding.ts';
import { type ShownFinding, shownFindings } from '../state/shown-findings.ts';
import { Button } from '../ui/button.tsx';
import { words } from '../words/en.ts';

const said = words.notes;

/** What the checks have to say, always in view; each finding leads to its place, and has its cure beside it. */
export function Notes() {
  useAnswer('findings');
  const listed = useAnswer('parts');
  const parts = listed ?? [];
  const findings = shownFindings.value;
  const wrong = problems.value;
  // On a phone they are one line until they are opened.
  const [isOpen, setOpen] = useState(false);
  return (
    <aside class={`notes ${progress.value} ${isOpen ? '' : 'is-closed'}`} aria-label={said.title}>
      <header>
        <h2>{said.title}</h2>
        <p class="tally">
          {wrong.length > 0 ? said.unusable : tallyOf(findings.map(({ finding }) => finding))}
        </p>
        <p class="progress" role="status">
          {progress.value === 'reckoning' ? words.reckoning : progress.value === 'settled' ? words.later : ''}
        </p>
        <span class="open-notes">
          <Button look="quiet" aria-expanded={isOpen} onClick={() => setOpen(!isOpen)}>
            {isOpen ? said.close : said.open}
          </Button>
        </span>
      </header>
      {wrong.length > 0 && listed !== undefined ? <p class="hint">{said.unusableHelp}</p> : null}
      <ul class="findings">
        {wrong.map((problem) => (
          <ProblemItem key={problem.message} problem={problem} />
        ))}
        {findings.map(({ finding, awaited }) => (
          <FindingItem
            key={`${keyOfFinding(finding)} ${finding.message}`}
            finding={finding}
            awaited={awaited}
            about={parts.length > 1 ? parts.find(({ name }) => name === finding.part)?.label : undefined}
          />
        ))}
      </ul>
      {findings.length === 0 && wrong.length === 0 ? <p class="hint">{said.none}</p> : null}
    </aside>
  );
}

function tallyOf(findings: readonly Finding[]): string {
  return (['stop', 'caution', 'note'] as const)
    .map((severity) => [severity, findings.filter((each) => each.severity === severity).length] as const)
    .filter(([, count]) => count > 0)
    .map(([severity, count]) => said.count[severity](count))
    .join(', ');
}

function ProblemItem({ problem }: { readonly problem: Problem }) {
  const parameter = parameterOf(problem);
  return (
    <li class="finding stop">
      <p class="severity">{said.severity.stop}</p>
      <p>{problem.message}</p>
      <CureButton about={problem.message} />
      {parameter === undefined ? null : (
        <Button look="quiet" onClick={() => seekParameter(parameter)}>
          {said.toFigure}
        </Button>
      )}
    </li>
  );
}

interface FindingItemProps extends ShownFinding {
  /** The part that it is of, where there are several. */
  readonly about: string | undefined;
}

function FindingItem({ finding, awaited, about }: FindingItemProps) {
  const key = keyOfFinding(finding);
  const { severity, message, cure } = finding;
  const isChosen = selection.value.finding === key;
  return (
    <li
      class={`finding ${severity} ${isChosen ? 'is-chosen' : ''} ${awaited ? 'is-awaited' : ''}`}
      title={awaited ? said.awaited : undefined}
    >
      <button type="button" aria-pressed={isChosen} title={said.show} onClick={() => showFinding(finding)}>
        <span class="severity">{said.severity[severity]}</span>{' '}
        {about === undefined || message.startsWith(about) ? null : <span class="about">{about} · </span>}
        {message}
      </button>
      {cure === undefined ? null : <p class="cure">{cure}</p>}
      <CureButton about={key} />
    </li>
  );
}

/** Where one figure alone would cure it. */
function CureButton({ about }: { readonly about: string }) {
  const set = cures.value[about];
  if (set === undefined) return null;
  return (
    <Button
      onClick={() => takeCure(set)}
      onPointerEnter={() => foreseeCure(set)}
      onFocus={() => foreseeCure(set)}
    >
      {said.set(set.words)}
    </Button>
  );
}
