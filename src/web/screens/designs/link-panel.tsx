import { useState } from 'preact/hooks';
import { design } from '../../state/current.ts';
import { linkTo, takeInLink } from '../../state/links.ts';
import { show } from '../../state/screen.ts';
import { Button } from '../../ui/button.tsx';
import { words } from '../../words/en.ts';

const said = words.link;

/** A design out as a link, and in from one: a line of text that holds it whole, photographs apart. */
export function LinkPanel() {
  const [link, setLink] = useState<string>();
  const [text, setText] = useState('');
  const [isCopied, setCopied] = useState(false);
  const now = design.value;
  const copy = async (): Promise<void> => {
    await navigator.clipboard.writeText(link ?? '').then(
      () => setCopied(true),
      () => undefined,
    );
  };
  const open = async (): Promise<void> => {
    if (await takeInLink(text)) show('shape');
  };
  return (
    <section class="links" aria-labelledby="links">
      <h2 id="links">{said.title}</h2>
      <p class="hint">{said.help}</p>
      {now === undefined ? null : (
        <Button
          onClick={() => {
            setCopied(false);
            void linkTo(now).then(setLink);
          }}
        >
          {said.make(now.name)}
        </Button>
      )}
      {link === undefined ? null : (
        <>
          <label class="choice">
            {said.here}{' '}
            <textarea readOnly rows={4} value={link} onFocus={(event) => event.currentTarget.select()} />
          </label>
          <Button onClick={() => void copy()}>{isCopied ? said.copied : said.copy}</Button>
        </>
      )}
      <label class="choice">
        {said.from} <textarea rows={3} value={text} onInput={(event) => setText(event.currentTarget.value)} />
      </label>
      <Button onClick={() => void open()} disabled={text.trim() === ''}>
        {said.open}
      </Button>
    </section>
  );
}
