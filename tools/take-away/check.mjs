// SPDX-License-Identifier: Apache-2.0
// Checks what foldwright gives away, with other people's readers: models by the Khronos validator, models and a film in
// a browser page. Arguments: film, models. The browser is the one that CHROMIUM names.
import { spawn } from "node:child_process";
import { createServer } from "node:http";
import { readFileSync, statSync, createReadStream, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { basename, join } from "node:path";
import validator from "gltf-validator";

const [film, ...models] = process.argv.slice(2);
const here = new URL(".", import.meta.url).pathname;
let bad = 0;

function say(good, words) {
    console.log(`${good ? "holds" : "FAILS"}  ${words}`);
    bad += good ? 0 : 1;
}

for (const model of models) {
    const report = await validator.validateBytes(new Uint8Array(readFileSync(model)));
    const { numErrors, numWarnings } = report.issues;
    say(numErrors + numWarnings === 0, `${basename(model)}: ${numErrors} errors, ${numWarnings} warnings by the Khronos rules`);
}

const pages = {
    "/film.html": `<video id=v muted src=/film></video><script type=module>
        const v = document.getElementById("v"), c = document.createElement("canvas"), g = c.getContext("2d");
        const once = what => new Promise((go, no) => { v.addEventListener(what, go, {once: true}); v.onerror = () => no(v.error.message); });
        try {
            if (v.readyState < 2) await once("loadeddata");
            c.width = v.videoWidth; c.height = v.videoHeight;
            const shots = [];
            for (const share of [0.1, 0.5, 0.9]) {
                v.currentTime = share * v.duration;
                await once("seeked");
                g.drawImage(v, 0, 0);
                const p = g.getImageData(0, 0, c.width, c.height).data;
                let sum = 0; for (let i = 0; i < p.length; i += 4) sum += p[i];
                shots.push({at: v.currentTime, paper: [...p.slice(4 * (8 * c.width + 8), 4 * (8 * c.width + 8) + 3)], mean: sum / (p.length / 4)});
            }
            v.currentTime = 0; await once("seeked");
            await v.play(); await new Promise(go => setTimeout(go, 800)); v.pause();
            await fetch("/result", {method: "POST", body: JSON.stringify({duration: v.duration, width: c.width, shots, played: v.currentTime})});
        } catch (e) { await fetch("/result", {method: "POST", body: JSON.stringify({error: String(e)})}); }
        </script>`,
    "/model.html": `<script type=importmap>{"imports": {"three": "/node_modules/three/build/three.module.js"}}</script><script type=module>
        try {
            const three = await import("three");
            const { GLTFLoader } = await import("/node_modules/three/examples/jsm/loaders/GLTFLoader.js");
            const r = new three.WebGLRenderer({preserveDrawingBuffer: true}); r.setSize(640, 480);
            const scene = new three.Scene(); scene.background = new three.Color(0xffffff); scene.add(new three.AmbientLight(0xffffff, 3));
            const model = await new GLTFLoader().loadAsync("/model");
            scene.add(model.scene);
            const box = new three.Box3().setFromObject(model.scene), size = box.getSize(new three.Vector3()), middle = box.getCenter(new three.Vector3());
            const camera = new three.PerspectiveCamera(35, 4 / 3, 0.01, 100);
            camera.position.copy(middle).add(new three.Vector3(0.35, 0.3, 1).multiplyScalar(2.2 * Math.max(size.x, size.y, size.z)));
            camera.lookAt(middle);
            const mixer = new three.AnimationMixer(model.scene), clip = model.animations[0];
            mixer.clipAction(clip).play();
            const shot = t => { mixer.setTime(t); r.render(scene, camera); const g = r.getContext(), p = new Uint8Array(640 * 480 * 4); g.readPixels(0, 0, 640, 480, g.RGBA, g.UNSIGNED_BYTE, p); return p; };
            const a = shot(0), b = shot(clip.duration / 2);
            let moved = 0, ink = 0;
            for (let i = 0; i < a.length; i += 4) {
                moved += Math.abs(a[i] - b[i]) + Math.abs(a[i + 1] - b[i + 1]) > 24 ? 1 : 0;
                ink += a[i + 2] > a[i] + 40 && a[i] < 90 ? 1 : 0;
            }
            await fetch("/result", {method: "POST", body: JSON.stringify({duration: clip.duration, moved, ink})});
        } catch (e) { await fetch("/result", {method: "POST", body: JSON.stringify({error: String(e)})}); }
        </script>`,
};

/** Opens a page in the browser and waits for what it reports. */
async function ask(page, files) {
    const profile = mkdtempSync(join(tmpdir(), "take-away-"));
    let server, browser;
    try {
        return await new Promise((go, no) => {
            server = createServer((request, response) => {
                const path = request.url.split("?")[0];
                if (path === "/result") {
                    let body = "";
                    request.on("data", d => (body += d)).on("end", () => { response.end(); go(JSON.parse(body)); });
                } else if (pages[path]) {
                    response.writeHead(200, { "Content-Type": "text/html" }).end(pages[path]);
                } else if (files[path]) {
                    send(files[path], request, response);
                } else if (path.startsWith("/node_modules/three/") && !path.includes("..")) {
                    response.writeHead(200, { "Content-Type": "text/javascript" }).end(readFileSync(here + path));
                } else {
                    response.writeHead(404).end();
                }
            }).listen(0, "127.0.0.1", () => {
                browser = spawn(process.env.CHROMIUM ?? "chromium", ["--headless=new", "--no-sandbox", "--disable-dev-shm-usage",
                    "--autoplay-policy=no-user-gesture-required", "--use-angle=swiftshader", "--enable-unsafe-swiftshader",
                    `--user-data-dir=${profile}`, `http://127.0.0.1:${server.address().port}${page}`], { stdio: "ignore" });
                browser.on("error", no);
            });
            setTimeout(() => no(new Error("no answer from the page within a minute")), 60000);
        });
    } catch (e) {
        return { error: e.message };
    } finally {
        browser?.kill("SIGKILL");
        server?.closeAllConnections();
        server?.close();
        await new Promise(go => setTimeout(go, 300));
        rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
    }
}

/** Sends a file or the range asked for: without ranges a browser cannot seek. */
function send({ file, type }, request, response) {
    const size = statSync(file).size;
    const range = /bytes=(\d+)-(\d*)/.exec(request.headers.range ?? "");
    const from = range ? Number(range[1]) : 0;
    const to = range && range[2] ? Number(range[2]) : size - 1;
    response.writeHead(range ? 206 : 200, {
        "Content-Type": type, "Accept-Ranges": "bytes", "Content-Length": to - from + 1,
        ...(range ? { "Content-Range": `bytes ${from}-${to}/${size}` } : {}),
    });
    createReadStream(file, { start: from, end: to }).pipe(response);
}

const seen = await ask("/film.html", { "/film": { file: film, type: "video/mp4" } });
if (seen.error) {
    say(false, `film in a browser: ${seen.error}`);
} else {
    const paper = [247, 243, 234];
    const off = Math.max(...seen.shots.flatMap(s => s.paper.map((c, i) => Math.abs(c - paper[i]))));
    const means = seen.shots.map(s => s.mean.toFixed(2));
    say(seen.shots.every((s, i) => Math.abs(s.at - [0.1, 0.5, 0.9][i] * seen.duration) < 0.05) && new Set(means).size === 3,
        `film of ${seen.duration.toFixed(2)} s seeks to three different pictures`);
    say(seen.played > 0.3, `film plays: ${seen.played.toFixed(2)} s in 0.8 s`);
    say(off <= 1, `paper of the film within ${off}/255 in the browser`);
}
for (const model of models) {
    const shown = await ask("/model.html", { "/model": { file: model, type: "model/gltf-binary" } });
    say(!shown.error && shown.moved > 500 && shown.ink > 20,
        shown.error ? `${basename(model)} in a browser: ${shown.error}`
            : `${basename(model)} moves in a browser: ${shown.moved} pixels change, ${shown.ink} carry deep load ink`);
}
process.exit(bad ? 1 : 0);
