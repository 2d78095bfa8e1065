import{R as o}from"./chunk-NOD6VTU6.js";var s=150,t=new Promise(e=>setTimeout(e,s));Promise.race([o,t]).then(()=>import("./main-Z53ERL3I.js"));
