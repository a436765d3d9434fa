import { defineConfig } from 'vitest/config';

export default defineConfig({
    test: {
        include: ['test/**/*.test.ts'],
        setupFiles: ['language/grammar/polyfill.ts'],
        // Modules keep no state between texts, so one worker may run all files: several times faster than a fresh world each.
        isolate: false,
        pool: 'threads',
        // One for each of two cores; by itself the runner leaves one of them idle.
        maxWorkers: 2,
        // Only against what hangs: a busy machine makes minutes of seconds.
        testTimeout: 60_000,
    },
    resolve: {
        // The package's front door takes over a second to load; the one class we use stands alone in this file.
        alias: { mathjs: new URL('./node_modules/mathjs/lib/esm/type/unit/Unit.js', import.meta.url).pathname },
    },
});
