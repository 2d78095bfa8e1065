import{R as o}from"./chunk-TQ53HCQU.js";var s=150,t=new Promise(e=>setTimeout(e,s));Promise.race([o,t]).then(()=>import("./main-7WYRKEWR.js"));
