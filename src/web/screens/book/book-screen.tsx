import { useAnswer } from '../../engine/use-answer.ts';
import { SETTING_OUT } from '../../print/print-job.ts';
import { PrintProgress } from '../../print/print-progress.tsx';
import { printToFile } from '../../print/printer.ts';
import { design } from '../../state/current.ts';
import { Button } from '../../ui/button.tsx';
import { words } from '../../words/en.ts';
import { BookBlock } from './book-block.tsx';

/** The shop book as it is printed, to be read on the screen and made into a PDF. */
export function BookScreen() {
  const book = useAnswer('book');
  const inHand = design.value;
  const said = words.book;
  if (inHand === undefined || book === undefined) return <p class="waiting">{words.loading}</p>;
  if (book === 'parts alone') return <p class="waiting">{said.partsAlone}</p>;
  return (
    <div class="book-screen">
      <nav aria-label={said.contents}>
        <Button look="main" onClick={() => void printToFile(inHand, { kind: 'book' })}>
          {said.print}
        </Button>
        <PrintProgress />
        <h2>{said.contents}</h2>
        <ol>
          {book.chapters.map(({ title }, at) => (
            <li key={title}>
              <button
                type="button"
                class="link"
                onClick={() => document.getElementById(`chapter-${at}`)?.scrollIntoView()}
              >
                {title}
              </button>
            </li>
          ))}
        </ol>
        <h2>{said.settingOut}</h2>
        <div class="row">
          {SETTING_OUT.map((view) => (
            <Button key={view} onClick={() => void printToFile(inHand, { kind: 'setting-out', view })}>
              {said.views[view]}
            </Button>
          ))}
        </div>
      </nav>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by the keyboard */}
      <article tabIndex={0} aria-label={words.screens.book}>
        <h1>{book.title}</h1>
        <p>{book.about}</p>
        {book.chapters.map(({ title, blocks }, at) => (
          <section key={title} id={`chapter-${at}`} aria-label={title}>
            <h2>{title}</h2>
            {blocks.map((block, i) => (
              <BookBlock key={i} block={block} />
            ))}
          </section>
        ))}
      </article>
    </div>
  );
}
