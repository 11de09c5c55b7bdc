#!/usr/bin/env node
// The program is TypeScript; this registers the reader for it and hands over.
import { register } from 'tsx/esm/api';

register();
await import('./main.ts');
