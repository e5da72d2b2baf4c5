import type { ButtonHTMLAttributes, ComponentChildren } from 'preact';

interface ButtonProps extends Omit<ButtonHTMLAttributes<HTMLButtonElement>, 'class' | 'type'> {
  readonly children: ComponentChildren;
  /** `main`: the one thing that is to be done here; `quiet`: no frame until it is touched. */
  readonly look?: 'main' | 'plain' | 'quiet';
}

export function Button({ look = 'plain', children, ...rest }: ButtonProps) {
  return (
    <button type="button" class={`button ${look}`} {...rest}>
      {children}
    </button>
  );
}
