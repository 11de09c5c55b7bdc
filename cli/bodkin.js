#!/usr/bin/env node
import { program } from './bundle.js';

await import(await program());
