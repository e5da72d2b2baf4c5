import { problems } from '../../engine/engine.ts';
import { parameterOf, seekParameter } from '../../state/show-finding.ts';
import { Button } from '../../ui/button.tsx';
import { words } from '../../words/en.ts';

/** In place of a drawing: it is on its way, or it waits for a figure that can be used. */
export function NoDrawing() {
  const wrong = problems.value;
  if (wrong.length === 0) return <p class="waiting">{words.loading}</p>;
  return (
    <div class="no-drawing" role="status">
      <p>{words.shape.noDrawing}</p>
      <ul>
        {wrong.map((problem) => {
          const { message } = problem;
          const parameter = parameterOf(problem);
          return (
            <li key={message}>
              {message}{' '}
              {parameter === undefined ? null : (
                <Button onClick={() => seekParameter(parameter)}>{words.notes.toFigure}</Button>
              )}
            </li>
          );
        })}
      </ul>
    </div>
  );
}
