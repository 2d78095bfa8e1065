import{R as o}from"./chunk-OK3W3KGQ.js";var s=150,t=new Promise(e=>setTimeout(e,s));Promise.race([o,t]).then(()=>import("./main-6XQLNTXP.js"));
