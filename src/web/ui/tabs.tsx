import type { ComponentChildren } from 'preact';
import { useId, useRef } from 'preact/hooks';

interface TabsProps<Name extends string> {
  readonly label: string;
  readonly tabs: readonly { readonly name: Name; readonly label: string }[];
  readonly chosen: Name;
  readonly onChoose: (name: Name) => void;
  /** What the chosen tab shows. */
  readonly children: ComponentChildren;
}

/** Tabs by the practice of WAI-ARIA: arrow keys, Home and End choose, Tab goes on to what the tab shows. */
export function Tabs<Name extends string>({ label, tabs, chosen, onChoose, children }: TabsProps<Name>) {
  const id = useId();
  const list = useRef<HTMLDivElement>(null);
  const at = tabs.findIndex(({ name }) => name === chosen);
  const onKeyDown = (event: KeyboardEvent): void => {
    const to = { ArrowLeft: at - 1, ArrowRight: at + 1, Home: 0, End: tabs.length - 1 }[event.key];
    if (to === undefined) return;
    event.preventDefault();
    const next = (to + tabs.length) % tabs.length;
    onChoose(tabs[next]!.name);
    list.current?.querySelectorAll<HTMLElement>('[role=tab]')[next]?.focus();
  };
  return (
    <div class="tabs">
      <div role="tablist" aria-label={label} ref={list} onKeyDown={onKeyDown}>
        {tabs.map((tab) => (
          <button
            type="button"
            role="tab"
            key={tab.name}
            id={`${id}-${tab.name}`}
            aria-selected={tab.name === chosen}
            aria-controls={`${id}-panel`}
            tabIndex={tab.name === chosen ? 0 : -1}
            onClick={() => onChoose(tab.name)}
          >
            {tab.label}
          </button>
        ))}
      </div>
      <div role="tabpanel" id={`${id}-panel`} aria-labelledby={`${id}-${chosen}`} tabIndex={-1}>
        {children}
      </div>
    </div>
  );
}
