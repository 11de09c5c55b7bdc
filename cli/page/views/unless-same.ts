import { Component, type ComponentChild, type FunctionComponent } from 'preact';

/**
 * A view that is drawn again only where what it is given has changed by `isSame`. While a slider moves, sixty fields and a
 * hundred lines stay as they are: looking that up in what they are given is quicker than drawing them and comparing.
 */
export function unlessSame<Props extends object>(
  view: FunctionComponent<Props>,
  isSame: (before: Props, now: Props) => boolean,
): FunctionComponent<Props> {
  class Kept extends Component<Props> {
    override shouldComponentUpdate(now: Readonly<Props>): boolean {
      return !isSame(this.props as Props, now as Props);
    }
    override render(): ComponentChild {
      return view(this.props as Parameters<typeof view>[0]);
    }
  }
  return Kept as unknown as FunctionComponent<Props>;
}

/** The same in each of the named parts. */
export const sameIn =
  <Props extends object>(names: readonly (keyof Props)[]) =>
  (before: Props, now: Props): boolean =>
    names.every((name) => before[name] === now[name]);
