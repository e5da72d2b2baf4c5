import type { ComponentChildren } from 'preact';
import { useEffect, useId, useRef } from 'preact/hooks';
import { words } from '../words/en.ts';
import { Button } from './button.tsx';

interface DialogProps {
  readonly title: string;
  readonly onClose: () => void;
  readonly children: ComponentChildren;
}

/** A dialog over the page: what is behind it cannot be reached; Escape closes it, and the focus goes back to where it was. */
export function Dialog({ title, onClose, children }: DialogProps) {
  const own = useRef<HTMLDialogElement>(null);
  const name = useId();
  useEffect(() => {
    const before = document.activeElement;
    own.current?.showModal();
    return () => (before as HTMLElement | null)?.focus?.();
  }, []);
  return (
    <dialog ref={own} class="dialog" aria-labelledby={name} onClose={onClose}>
      <header>
        <h2 id={name}>{title}</h2>
        <Button look="quiet" aria-label={words.close} onClick={() => own.current?.close()}>
          ×
        </Button>
      </header>
      {children}
    </dialog>
  );
}
