import { Button } from '../ui/button.tsx';
import { words } from '../words/en.ts';
import { printFault, printing, stopPrinting } from './printer.ts';

/** How far a print is, with a way to stop it; or why it failed. */
export function PrintProgress() {
  const now = printing.value;
  const said = words.print;
  if (now === undefined) {
    return printFault.value === undefined ? null : (
      <p class="problem" role="alert">
        {said.failed} {printFault.value}
      </p>
    );
  }
  return (
    <div class="print-progress" role="status">
      <progress max={1} value={now.share} aria-label={said.making(now.file)} />
      <span>{now.words === '' ? said.making(now.file) : now.words}</span>
      <Button look="quiet" onClick={stopPrinting}>
        {words.cancel}
      </Button>
    </div>
  );
}
