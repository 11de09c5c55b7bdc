import type { PageView } from '../view-names.ts';

/** So many pictures of the screen a view is waited for, which may first have to be loaded. */
const PATIENCE = 120;

/** Goes to a field of a view: it has the focus once it stands there. */
export function goTo(view: PageView, field: string): void {
  location.hash = view;
  let left = PATIENCE;
  const look = (): void => {
    const there =
      document.getElementById(field) ?? document.querySelector<HTMLElement>(`[name="${field}"]:checked`);
    if (there) there.focus();
    else if (left-- > 0) requestAnimationFrame(look);
  };
  requestAnimationFrame(look);
}
