// Lists what there is to plan; the bench's own page takes this one's place.
const key = location.hash.slice(1);
const said = document.getElementById("said");
const answer = await fetch("/api/files", { headers: { "X-Bench-Key": key } });
const files = await answer.json();
if (answer.ok) {
  said.textContent = files.folder;
  for (const run of files.runs) {
    const item = document.createElement("li");
    item.textContent = `${run.name} (${run.file})`;
    document.getElementById("runs").append(item);
  }
} else {
  said.textContent = files.complaint.line;
}
