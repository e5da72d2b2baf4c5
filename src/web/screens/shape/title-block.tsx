import { useAnswer } from '../../engine/use-answer.ts';
import { design } from '../../state/current.ts';
import { words } from '../../words/en.ts';

/** As in the corner of a drawing on paper: what it is of, which revision, in which unit. */
export function TitleBlock() {
  const sheets = useAnswer('sheetCount');
  const form = useAnswer('form');
  const inHand = design.value;
  if (inHand === undefined) return null;
  const { name, revision, units } = inHand;
  const said = words.titleBlock;
  return (
    <dl class="title-block">
      <div class="wide">
        <dt>{said.name}</dt>
        <dd>{name}</dd>
      </div>
      <div>
        <dt>{said.form}</dt>
        <dd>{form?.title ?? inHand.form.name}</dd>
      </div>
      <div>
        <dt>{said.revision}</dt>
        <dd>
          {revision.index} · {revision.date}
        </dd>
      </div>
      <div>
        <dt>{said.unit}</dt>
        <dd>{units.length}</dd>
      </div>
      <div>
        <dt>{said.paper}</dt>
        <dd>{sheets === undefined ? '…' : words.sheetCount(sheets)}</dd>
      </div>
    </dl>
  );
}
