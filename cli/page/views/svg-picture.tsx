import { useState } from 'preact/hooks';
import { type LookedAt, whole } from './drawing/looked-at.ts';
import { Pane } from './drawing/pane.tsx';
import { useUrl } from './drawing/use-url.ts';

/** A drawing written elsewhere, to be looked at closely, with its words for who cannot see it. */
export function SvgPicture({ svg, called, words }: { svg: string; called: string; words: string }) {
  const [look, setLook] = useState<LookedAt>(whole);
  const url = useUrl(svg);
  const { width, height } = sizeOf(svg);
  return (
    <div class="plate">
      <Pane
        look={look}
        onLook={setLook}
        box={{ x: 0, y: 0, width, height }}
        says={words}
        called={called}
        holds="one picture"
        fitted
      >
        {url && <image href={url} width={width} height={height} />}
      </Pane>
    </div>
  );
}

/** How large a drawing is by its own measure. */
function sizeOf(svg: string): { readonly width: number; readonly height: number } {
  const [, width, height] = /viewBox="\S+ \S+ ([\d.]+) ([\d.]+)"/.exec(svg) ?? [];
  return { width: Number(width ?? 1), height: Number(height ?? 1) };
}
