import { it, expect } from 'vitest';
import { decode } from './index.ts';
it('worst', () => {
 const run = (attempts: unknown, extra = {}) => {
 const text = JSON.stringify({ format: 'cairnmark/class', version: 1, attempts, ...extra });
 const t = performance.now(); const d = decode(text);
 console.log(text.length, performance.now() - t, d.ok ? 0 : d.issues.length, d.ok ? 0 : d.issues.at(-1), process.memoryUsage().heapUsed/1e6, process.memoryUsage().rss/1e6); };
 run(Array(400).fill({ layout: { kind: 'numbers-only', pieces: Array(4900).fill(0) } }));
 run(Array(55).fill({ layout: { kind: 'laid-out', pieces: Array(4900).fill({kind:'A',resting:'B',xMm:'',yMm:'',turnRad:'',on:1}) } }));
 run(Array(5000).fill({ layout: { kind: 'laid-out', pieces: Array(300).fill({}) } }));
 run(Array(5000).fill({ answers: Object.fromEntries(Array.from({length: 300}, (_, k) => ['k'+k, 0])) }));
 run([], Object.fromEntries(Array.from({length: 900000}, (_, k) => ['k'+k, 0])));
}, 100000);
