import { validateBytes } from 'gltf-validator';
import { parseSync } from 'svgson';
import { describe, expect, test } from 'vitest';
import { formView } from '../../../../engine/render/form/form-view.ts';
import { formGltf } from '../../../../engine/render/form/gltf.ts';
import { viewNames } from '../../../../engine/render/form/view.ts';
import { formOf } from '../../form/people.ts';

describe('a form as glTF', () => {
  // Khronos' own validator, another hand's reading of glTF 2.0.
  test.each(['leading-lady', 'scene-painter'])('of the %s has nothing against it', async (name) => {
    const report = await validateBytes(formGltf(formOf(name)));
    expect(report.issues.messages).toEqual([]);
    expect(report.info).toMatchObject({ version: '2.0' });
    expect(report.info.totalTriangleCount).toBe(formOf(name).surface.triangles.length / 3);
  });

  test('is the same for the same form, and names parts and tapes', () => {
    const bytes = formGltf(formOf('prompter'));
    expect(formGltf(formOf('prompter'))).toEqual(bytes);
    const text = new TextDecoder().decode(bytes.subarray(20, 4000));
    expect(text).toContain('"name":"left arm"');
    expect(text).toContain('"name":"neck shoulder point to waist"');
  });
});

describe('a form as it is seen', () => {
  test.each(viewNames)('from the %s is a picture with its tapes named in her unit', (view) => {
    const svg = formView(formOf('leading-lady'), view, 'cm');
    const root = parseSync(svg);
    expect(root.name).toBe('svg');
    expect(svg.length).toBeLessThan(1_000_000);
    expect(svg).toContain('waist girth 74 cm');
    expect(svg.includes('across back width 35 cm')).toBe(view !== 'front');
    expect(svg).not.toMatch(/NaN|Infinity|undefined/);
    expect(formView(formOf('leading-lady'), view, 'in')).toContain('waist girth 29 1/8 in');
  });

  test('shows of the side what faces it', () => {
    const svg = formView(formOf('leading-lady'), 'front', 'mm');
    expect(svg).toContain('bust point width 190 mm');
    expect(svg).not.toContain('back neck point to waist');
  });
});
