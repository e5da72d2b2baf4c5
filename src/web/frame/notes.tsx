import type { Finding } from '../../core/index.ts';
import { problems, progress } from '../engine/engine.ts';
import { useAnswer } from '../engine/use-answer.ts';
import { keyOfFinding, selection } from '../state/selection.ts';
import { words } from '../words/en.ts';

/** What the checks have to say, always in view; each finding leads to its place. */
export function Notes() {
  const findings = useAnswer('findings') ?? [];
  const sheets = useAnswer('sheetCount');
  const said = words.notes;
  return (
    <aside class="notes" aria-label={said.title}>
      <h2>{said.title}</h2>
      <p class="progress" role="status">
        {progress.value === 'reckoning' ? words.reckoning : progress.value === 'settled' ? words.later : ''}
        {sheets === undefined ? '' : ` ${words.sheetCount(sheets)}`}
      </p>
      {problems.value.length > 0 ? (
        <section class="problems" role="alert">
          <h3>{said.unusable}</h3>
          <ul>
            {problems.value.map((problem) => (
              <li key={`${problem.code} ${problem.path}`}>{problem.message}</li>
            ))}
          </ul>
          <p class="hint">{said.unusableHelp}</p>
        </section>
      ) : null}
      {findings.length === 0 && problems.value.length === 0 ? <p class="hint">{said.none}</p> : null}
      <ul class="findings">
        {findings.map((finding) => (
          <FindingItem key={keyOfFinding(finding)} finding={finding} />
        ))}
      </ul>
    </aside>
  );
}

function FindingItem({ finding }: { readonly finding: Finding }) {
  const key = keyOfFinding(finding);
  const { part, edges, severity, message, cure } = finding;
  const choose = (): void => {
    selection.value = {
      finding: key,
      ...(part === undefined ? {} : { part }),
      ...(edges[0] === undefined ? {} : { edge: edges[0] }),
    };
  };
  return (
    <li class={`finding ${severity}`}>
      <button type="button" aria-pressed={selection.value.finding === key} onClick={choose}>
        <strong>{words.notes.severity[severity]}</strong> {message}
      </button>
      {cure === undefined ? null : <p class="cure">{cure}</p>}
    </li>
  );
}
