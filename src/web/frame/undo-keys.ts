import { redo, undo } from '../state/current.ts';

/** As assistive technology is told. */
export const UNDO_KEYS = 'Control+Z Meta+Z';
export const REDO_KEYS = 'Control+Shift+Z Meta+Shift+Z Control+Y';

/** Takes back and makes again by the keys that every program has for it; while something is typed they are the field's own. */
export function listenForUndo(): void {
  addEventListener('keydown', (event) => {
    if (!(event.ctrlKey || event.metaKey) || event.altKey || event.defaultPrevented) return;
    if (isTyping(event.target)) return;
    const key = event.key.toLowerCase();
    const isRedo = (key === 'z' && event.shiftKey) || (key === 'y' && event.ctrlKey && !event.shiftKey);
    if (!isRedo && !(key === 'z' && !event.shiftKey)) return;
    event.preventDefault();
    if (isRedo) redo();
    else undo();
  });
}

/** A field in which nothing has been typed that is not taken yet says so. */
function isTyping(target: EventTarget | null): boolean {
  if (!(target instanceof HTMLElement)) return false;
  const field = target.closest<HTMLElement>('input, textarea, [contenteditable]');
  if (field === null || /^(checkbox|radio|range|file|button)$/.test((field as HTMLInputElement).type))
    return false;
  return field.dataset.typed !== 'no';
}
