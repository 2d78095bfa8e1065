import{A as um,B as dm,C as Jt,D as cm,E as pm,F as mm,G as re,H as we,I as fm,J as hm,K as ft,L as mn,M as Ui,N as Kt,O as Ul,P as gm,Q as _m,S as $m,T as bm,U as wm,a as Vp,b as Qp,c as H,d as y,e as Gp,f as fs,g as Pn,h as hs,i as Me,j as zo,k as Yp,l as Zp,m as Hi,n as Xp,o as em,p as qi,q as tm,r as nm,s as gs,t as om,u as im,v as rm,w as sm,x as am,y as On,z as lm}from"./chunk-TQ53HCQU.js";var _s=globalThis,bs=_s.ShadowRoot&&(_s.ShadyCSS===void 0||_s.ShadyCSS.nativeShadow)&&"adoptedStyleSheets"in Document.prototype&&"replace"in CSSStyleSheet.prototype,vm=Symbol(),ym=new WeakMap,$s=class{constructor(t,n,o){if(this._$cssResult$=!0,o!==vm)throw Error("CSSResult is not constructable. Use `unsafeCSS` or `css` instead.");this.cssText=t,this.t=n}get styleSheet(){let t=this.o,n=this.t;if(bs&&t===void 0){let o=n!==void 0&&n.length===1;o&&(t=ym.get(n)),t===void 0&&((this.o=t=new CSSStyleSheet).replaceSync(this.cssText),o&&ym.set(n,t))}return t}toString(){return this.cssText}},km=e=>new $s(typeof e=="string"?e:e+"",void 0,vm);var xm=(e,t)=>{if(bs)e.adoptedStyleSheets=t.map(n=>n instanceof CSSStyleSheet?n:n.styleSheet);else for(let n of t){let o=document.createElement("style"),i=_s.litNonce;i!==void 0&&o.setAttribute("nonce",i),o.textContent=n.cssText,e.appendChild(o)}},zl=bs?e=>e:e=>e instanceof CSSStyleSheet?(t=>{let n="";for(let o of t.cssRules)n+=o.cssText;return km(n)})(e):e;var{is:qy,defineProperty:Uy,getOwnPropertyDescriptor:zy,getOwnPropertyNames:Jy,getOwnPropertySymbols:Ky,getPrototypeOf:Vy}=Object,ws=globalThis,Tm=ws.trustedTypes,Qy=Tm?Tm.emptyScript:"",Gy=ws.reactiveElementPolyfillSupport,zi=(e,t)=>e,Jl={toAttribute(e,t){switch(t){case Boolean:e=e?Qy:null;break;case Object:case Array:e=e==null?e:JSON.stringify(e)}return e},fromAttribute(e,t){let n=e;switch(t){case Boolean:n=e!==null;break;case Number:n=e===null?null:Number(e);break;case Object:case Array:try{n=JSON.parse(e)}catch{n=null}}return n}},Sm=(e,t)=>!qy(e,t),Rm={attribute:!0,type:String,converter:Jl,reflect:!1,useDefault:!1,hasChanged:Sm};Symbol.metadata??=Symbol("metadata"),ws.litPropertyMetadata??=new WeakMap;var fn=class extends HTMLElement{static addInitializer(t){this._$Ei(),(this.l??=[]).push(t)}static get observedAttributes(){return this.finalize(),this._$Eh&&[...this._$Eh.keys()]}static createProperty(t,n=Rm){if(n.state&&(n.attribute=!1),this._$Ei(),this.prototype.hasOwnProperty(t)&&((n=Object.create(n)).wrapped=!0),this.elementProperties.set(t,n),!n.noAccessor){let o=Symbol(),i=this.getPropertyDescriptor(t,o,n);i!==void 0&&Uy(this.prototype,t,i)}}static getPropertyDescriptor(t,n,o){let{get:i,set:r}=zy(this.prototype,t)??{get(){return this[n]},set(l){this[n]=l}};return{get:i,set(l){let d=i?.call(this);r?.call(this,l),this.requestUpdate(t,d,o)},configurable:!0,enumerable:!0}}static getPropertyOptions(t){return this.elementProperties.get(t)??Rm}static _$Ei(){if(this.hasOwnProperty(zi("elementProperties")))return;let t=Vy(this);t.finalize(),t.l!==void 0&&(this.l=[...t.l]),this.elementProperties=new Map(t.elementProperties)}static finalize(){if(this.hasOwnProperty(zi("finalized")))return;if(this.finalized=!0,this._$Ei(),this.hasOwnProperty(zi("properties"))){let n=this.properties,o=[...Jy(n),...Ky(n)];for(let i of o)this.createProperty(i,n[i])}let t=this[Symbol.metadata];if(t!==null){let n=litPropertyMetadata.get(t);if(n!==void 0)for(let[o,i]of n)this.elementProperties.set(o,i)}this._$Eh=new Map;for(let[n,o]of this.elementProperties){let i=this._$Eu(n,o);i!==void 0&&this._$Eh.set(i,n)}this.elementStyles=this.finalizeStyles(this.styles)}static finalizeStyles(t){let n=[];if(Array.isArray(t)){let o=new Set(t.flat(1/0).reverse());for(let i of o)n.unshift(zl(i))}else t!==void 0&&n.push(zl(t));return n}static _$Eu(t,n){let o=n.attribute;return o===!1?void 0:typeof o=="string"?o:typeof t=="string"?t.toLowerCase():void 0}constructor(){super(),this._$Ep=void 0,this.isUpdatePending=!1,this.hasUpdated=!1,this._$Em=null,this._$Ev()}_$Ev(){this._$ES=new Promise(t=>this.enableUpdating=t),this._$AL=new Map,this._$E_(),this.requestUpdate(),this.constructor.l?.forEach(t=>t(this))}addController(t){(this._$EO??=new Set).add(t),this.renderRoot!==void 0&&this.isConnected&&t.hostConnected?.()}removeController(t){this._$EO?.delete(t)}_$E_(){let t=new Map,n=this.constructor.elementProperties;for(let o of n.keys())this.hasOwnProperty(o)&&(t.set(o,this[o]),delete this[o]);t.size>0&&(this._$Ep=t)}createRenderRoot(){let t=this.shadowRoot??this.attachShadow(this.constructor.shadowRootOptions);return xm(t,this.constructor.elementStyles),t}connectedCallback(){this.renderRoot??=this.createRenderRoot(),this.enableUpdating(!0),this._$EO?.forEach(t=>t.hostConnected?.())}enableUpdating(t){}disconnectedCallback(){this._$EO?.forEach(t=>t.hostDisconnected?.())}attributeChangedCallback(t,n,o){this._$AK(t,o)}_$ET(t,n){let o=this.constructor.elementProperties.get(t),i=this.constructor._$Eu(t,o);if(i!==void 0&&o.reflect===!0){let r=(o.converter?.toAttribute!==void 0?o.converter:Jl).toAttribute(n,o.type);this._$Em=t,r==null?this.removeAttribute(i):this.setAttribute(i,r),this._$Em=null}}_$AK(t,n){let o=this.constructor,i=o._$Eh.get(t);if(i!==void 0&&this._$Em!==i){let r=o.getPropertyOptions(i),l=typeof r.converter=="function"?{fromAttribute:r.converter}:r.converter?.fromAttribute!==void 0?r.converter:Jl;this._$Em=i;let d=l.fromAttribute(n,r.type);this[i]=d??this._$Ej?.get(i)??d,this._$Em=null}}requestUpdate(t,n,o,i=!1,r){if(t!==void 0){let l=this.constructor;if(i===!1&&(r=this[t]),o??=l.getPropertyOptions(t),!((o.hasChanged??Sm)(r,n)||o.useDefault&&o.reflect&&r===this._$Ej?.get(t)&&!this.hasAttribute(l._$Eu(t,o))))return;this.C(t,n,o)}this.isUpdatePending===!1&&(this._$ES=this._$EP())}C(t,n,{useDefault:o,reflect:i,wrapped:r},l){o&&!(this._$Ej??=new Map).has(t)&&(this._$Ej.set(t,l??n??this[t]),r!==!0||l!==void 0)||(this._$AL.has(t)||(this.hasUpdated||o||(n=void 0),this._$AL.set(t,n)),i===!0&&this._$Em!==t&&(this._$Eq??=new Set).add(t))}async _$EP(){this.isUpdatePending=!0;try{await this._$ES}catch(n){Promise.reject(n)}let t=this.scheduleUpdate();return t!=null&&await t,!this.isUpdatePending}scheduleUpdate(){return this.performUpdate()}performUpdate(){if(!this.isUpdatePending)return;if(!this.hasUpdated){if(this.renderRoot??=this.createRenderRoot(),this._$Ep){for(let[i,r]of this._$Ep)this[i]=r;this._$Ep=void 0}let o=this.constructor.elementProperties;if(o.size>0)for(let[i,r]of o){let{wrapped:l}=r,d=this[i];l!==!0||this._$AL.has(i)||d===void 0||this.C(i,void 0,r,d)}}let t=!1,n=this._$AL;try{t=this.shouldUpdate(n),t?(this.willUpdate(n),this._$EO?.forEach(o=>o.hostUpdate?.()),this.update(n)):this._$EM()}catch(o){throw t=!1,this._$EM(),o}t&&this._$AE(n)}willUpdate(t){}_$AE(t){this._$EO?.forEach(n=>n.hostUpdated?.()),this.hasUpdated||(this.hasUpdated=!0,this.firstUpdated(t)),this.updated(t)}_$EM(){this._$AL=new Map,this.isUpdatePending=!1}get updateComplete(){return this.getUpdateComplete()}getUpdateComplete(){return this._$ES}shouldUpdate(t){return!0}update(t){this._$Eq&&=this._$Eq.forEach(n=>this._$ET(n,this[n])),this._$EM()}updated(t){}firstUpdated(t){}};fn.elementStyles=[],fn.shadowRootOptions={mode:"open"},fn[zi("elementProperties")]=new Map,fn[zi("finalized")]=new Map,Gy?.({ReactiveElement:fn}),(ws.reactiveElementVersions??=[]).push("2.1.2");var Vl=globalThis,Am=e=>e,ys=Vl.trustedTypes,Dm=ys?ys.createPolicy("lit-html",{createHTML:e=>e}):void 0,Ql="$lit$",hn=`lit$${Math.random().toFixed(9).slice(2)}$`,Gl="?"+hn,Yy=`<${Gl}>`,go=document,Ki=()=>go.createComment(""),Vi=e=>e===null||typeof e!="object"&&typeof e!="function",Yl=Array.isArray,Cm=e=>Yl(e)||typeof e?.[Symbol.iterator]=="function",Kl=`[ 	
\f\r]`,Ji=/<(?:(!--|\/[^a-zA-Z])|(\/?[a-zA-Z][^>\s]*)|(\/?$))/g,Pm=/-->/g,Om=/>/g,fo=RegExp(`>|${Kl}(?:([^\\s"'>=/]+)(${Kl}*=${Kl}*(?:[^ 	
\f\r"'\`<>=]|("|')|))|$)`,"g"),Mm=/'/g,Bm=/"/g,Lm=/^(?:script|style|textarea|title)$/i,Zl=e=>(t,...n)=>({_$litType$:e,strings:t,values:n}),s=Zl(1),S=Zl(2),QO=Zl(3),Be=Symbol.for("lit-noChange"),u=Symbol.for("lit-nothing"),Fm=new WeakMap,ho=go.createTreeWalker(go,129);function Im(e,t){if(!Yl(e)||!e.hasOwnProperty("raw"))throw Error("invalid template strings array");return Dm!==void 0?Dm.createHTML(t):t}var Wm=(e,t)=>{let n=e.length-1,o=[],i,r=t===2?"<svg>":t===3?"<math>":"",l=Ji;for(let d=0;d<n;d++){let c=e[d],p,m,_=-1,b=0;for(;b<c.length&&(l.lastIndex=b,m=l.exec(c),m!==null);)b=l.lastIndex,l===Ji?m[1]==="!--"?l=Pm:m[1]!==void 0?l=Om:m[2]!==void 0?(Lm.test(m[2])&&(i=RegExp("</"+m[2],"g")),l=fo):m[3]!==void 0&&(l=fo):l===fo?m[0]===">"?(l=i??Ji,_=-1):m[1]===void 0?_=-2:(_=l.lastIndex-m[2].length,p=m[1],l=m[3]===void 0?fo:m[3]==='"'?Bm:Mm):l===Bm||l===Mm?l=fo:l===Pm||l===Om?l=Ji:(l=fo,i=void 0);let w=l===fo&&e[d+1].startsWith("/>")?" ":"";r+=l===Ji?c+Yy:_>=0?(o.push(p),c.slice(0,_)+Ql+c.slice(_)+hn+w):c+hn+(_===-2?d:w)}return[Im(e,r+(e[n]||"<?>")+(t===2?"</svg>":t===3?"</math>":"")),o]},Qi=class e{constructor({strings:t,_$litType$:n},o){let i;this.parts=[];let r=0,l=0,d=t.length-1,c=this.parts,[p,m]=Wm(t,n);if(this.el=e.createElement(p,o),ho.currentNode=this.el.content,n===2||n===3){let _=this.el.content.firstChild;_.replaceWith(..._.childNodes)}for(;(i=ho.nextNode())!==null&&c.length<d;){if(i.nodeType===1){if(i.hasAttributes())for(let _ of i.getAttributeNames())if(_.endsWith(Ql)){let b=m[l++],w=i.getAttribute(_).split(hn),x=/([.?@])?(.*)/.exec(b);c.push({type:1,index:r,name:x[2],strings:w,ctor:x[1]==="."?ks:x[1]==="?"?xs:x[1]==="@"?Ts:$o}),i.removeAttribute(_)}else _.startsWith(hn)&&(c.push({type:6,index:r}),i.removeAttribute(_));if(Lm.test(i.tagName)){let _=i.textContent.split(hn),b=_.length-1;if(b>0){i.textContent=ys?ys.emptyScript:"";for(let w=0;w<b;w++)i.append(_[w],Ki()),ho.nextNode(),c.push({type:2,index:++r});i.append(_[b],Ki())}}}else if(i.nodeType===8)if(i.data===Gl)c.push({type:2,index:r});else{let _=-1;for(;(_=i.data.indexOf(hn,_+1))!==-1;)c.push({type:7,index:r}),_+=hn.length-1}r++}}static createElement(t,n){let o=go.createElement("template");return o.innerHTML=t,o}};function _o(e,t,n=e,o){if(t===Be)return t;let i=o!==void 0?n._$Co?.[o]:n._$Cl,r=Vi(t)?void 0:t._$litDirective$;return i?.constructor!==r&&(i?._$AO?.(!1),r===void 0?i=void 0:(i=new r(e),i._$AT(e,n,o)),o!==void 0?(n._$Co??=[])[o]=i:n._$Cl=i),i!==void 0&&(t=_o(e,i._$AS(e,t.values),i,o)),t}var vs=class{constructor(t,n){this._$AV=[],this._$AN=void 0,this._$AD=t,this._$AM=n}get parentNode(){return this._$AM.parentNode}get _$AU(){return this._$AM._$AU}u(t){let{el:{content:n},parts:o}=this._$AD,i=(t?.creationScope??go).importNode(n,!0);ho.currentNode=i;let r=ho.nextNode(),l=0,d=0,c=o[0];for(;c!==void 0;){if(l===c.index){let p;c.type===2?p=new Jo(r,r.nextSibling,this,t):c.type===1?p=new c.ctor(r,c.name,c.strings,this,t):c.type===6&&(p=new Rs(r,this,t)),this._$AV.push(p),c=o[++d]}l!==c?.index&&(r=ho.nextNode(),l++)}return ho.currentNode=go,i}p(t){let n=0;for(let o of this._$AV)o!==void 0&&(o.strings!==void 0?(o._$AI(t,o,n),n+=o.strings.length-2):o._$AI(t[n])),n++}},Jo=class e{get _$AU(){return this._$AM?._$AU??this._$Cv}constructor(t,n,o,i){this.type=2,this._$AH=u,this._$AN=void 0,this._$AA=t,this._$AB=n,this._$AM=o,this.options=i,this._$Cv=i?.isConnected??!0}get parentNode(){let t=this._$AA.parentNode,n=this._$AM;return n!==void 0&&t?.nodeType===11&&(t=n.parentNode),t}get startNode(){return this._$AA}get endNode(){return this._$AB}_$AI(t,n=this){t=_o(this,t,n),Vi(t)?t===u||t==null||t===""?(this._$AH!==u&&this._$AR(),this._$AH=u):t!==this._$AH&&t!==Be&&this._(t):t._$litType$!==void 0?this.$(t):t.nodeType!==void 0?this.T(t):Cm(t)?this.k(t):this._(t)}O(t){return this._$AA.parentNode.insertBefore(t,this._$AB)}T(t){this._$AH!==t&&(this._$AR(),this._$AH=this.O(t))}_(t){this._$AH!==u&&Vi(this._$AH)?this._$AA.nextSibling.data=t:this.T(go.createTextNode(t)),this._$AH=t}$(t){let{values:n,_$litType$:o}=t,i=typeof o=="number"?this._$AC(t):(o.el===void 0&&(o.el=Qi.createElement(Im(o.h,o.h[0]),this.options)),o);if(this._$AH?._$AD===i)this._$AH.p(n);else{let r=new vs(i,this),l=r.u(this.options);r.p(n),this.T(l),this._$AH=r}}_$AC(t){let n=Fm.get(t.strings);return n===void 0&&Fm.set(t.strings,n=new Qi(t)),n}k(t){Yl(this._$AH)||(this._$AH=[],this._$AR());let n=this._$AH,o,i=0;for(let r of t)i===n.length?n.push(o=new e(this.O(Ki()),this.O(Ki()),this,this.options)):o=n[i],o._$AI(r),i++;i<n.length&&(this._$AR(o&&o._$AB.nextSibling,i),n.length=i)}_$AR(t=this._$AA.nextSibling,n){for(this._$AP?.(!1,!0,n);t!==this._$AB;){let o=Am(t).nextSibling;Am(t).remove(),t=o}}setConnected(t){this._$AM===void 0&&(this._$Cv=t,this._$AP?.(t))}},$o=class{get tagName(){return this.element.tagName}get _$AU(){return this._$AM._$AU}constructor(t,n,o,i,r){this.type=1,this._$AH=u,this._$AN=void 0,this.element=t,this.name=n,this._$AM=i,this.options=r,o.length>2||o[0]!==""||o[1]!==""?(this._$AH=Array(o.length-1).fill(new String),this.strings=o):this._$AH=u}_$AI(t,n=this,o,i){let r=this.strings,l=!1;if(r===void 0)t=_o(this,t,n,0),l=!Vi(t)||t!==this._$AH&&t!==Be,l&&(this._$AH=t);else{let d=t,c,p;for(t=r[0],c=0;c<r.length-1;c++)p=_o(this,d[o+c],n,c),p===Be&&(p=this._$AH[c]),l||=!Vi(p)||p!==this._$AH[c],p===u?t=u:t!==u&&(t+=(p??"")+r[c+1]),this._$AH[c]=p}l&&!i&&this.j(t)}j(t){t===u?this.element.removeAttribute(this.name):this.element.setAttribute(this.name,t??"")}},ks=class extends $o{constructor(){super(...arguments),this.type=3}j(t){this.element[this.name]=t===u?void 0:t}},xs=class extends $o{constructor(){super(...arguments),this.type=4}j(t){this.element.toggleAttribute(this.name,!!t&&t!==u)}},Ts=class extends $o{constructor(t,n,o,i,r){super(t,n,o,i,r),this.type=5}_$AI(t,n=this){if((t=_o(this,t,n,0)??u)===Be)return;let o=this._$AH,i=t===u&&o!==u||t.capture!==o.capture||t.once!==o.once||t.passive!==o.passive,r=t!==u&&(o===u||i);i&&this.element.removeEventListener(this.name,this,o),r&&this.element.addEventListener(this.name,this,t),this._$AH=t}handleEvent(t){typeof this._$AH=="function"?this._$AH.call(this.options?.host??this.element,t):this._$AH.handleEvent(t)}},Rs=class{constructor(t,n,o){this.element=t,this.type=6,this._$AN=void 0,this._$AM=n,this.options=o}get _$AU(){return this._$AM._$AU}_$AI(t){_o(this,t)}},Em={M:Ql,P:hn,A:Gl,C:1,L:Wm,R:vs,D:Cm,V:_o,I:Jo,H:$o,N:xs,U:Ts,B:ks,F:Rs},Zy=Vl.litHtmlPolyfillSupport;Zy?.(Qi,Jo),(Vl.litHtmlVersions??=[]).push("3.3.3");var ht=(e,t,n)=>{let o=n?.renderBefore??t,i=o._$litPart$;if(i===void 0){let r=n?.renderBefore??null;o._$litPart$=i=new Jo(t.insertBefore(Ki(),r),r,void 0,n??{})}return i._$AI(e),i};var Xl=globalThis,Ko=class extends fn{constructor(){super(...arguments),this.renderOptions={host:this},this._$Do=void 0}createRenderRoot(){let t=super.createRenderRoot();return this.renderOptions.renderBefore??=t.firstChild,t}update(t){let n=this.render();this.hasUpdated||(this.renderOptions.isConnected=this.isConnected),super.update(t),this._$Do=ht(n,this.renderRoot,this.renderOptions)}connectedCallback(){super.connectedCallback(),this._$Do?.setConnected(!0)}disconnectedCallback(){super.disconnectedCallback(),this._$Do?.setConnected(!1)}render(){return Be}};Ko._$litElement$=!0,Ko.finalized=!0,Xl.litElementHydrateSupport?.({LitElement:Ko});var Xy=Xl.litElementPolyfillSupport;Xy?.({LitElement:Ko});(Xl.litElementVersions??=[]).push("4.2.2");var Nm=()=>{},eu=!1;function jm(e){Nm=e}function Q(){eu||(eu=!0,queueMicrotask(()=>{eu=!1,Nm()}))}function Hm(e){return e.split("/").slice(1).map(t=>t.replaceAll("~1","/").replaceAll("~0","~"))}var W=e=>e.replaceAll("~","~0").replaceAll("/","~1");function $(e,t){let n=e;for(let o of Hm(t)){if(n===null||typeof n!="object")return;n=n[o]}return n}function P(e,t,n){return tu(e,Hm(t),n)}function tu(e,t,n){let[o,...i]=t;if(o===void 0)return n;if(Array.isArray(e)){let d=[...e],c=tu(d[Number(o)],i,n);return c===void 0?d.splice(Number(o),1):d[Number(o)]=c,d}let r={...e??{}},l=tu(r[o],i,n);return l===void 0?delete r[o]:r[o]=l,r}var qm=e=>fs("GET",`/api/bench?run=${encodeURIComponent(e)}`),Um=e=>Pn("/api/bench/tick",e),zm=e=>Pn("/api/bench/weigh_cup",e),Jm=(e,t)=>Pn("/api/bench/anew",{run:e,batch:t}),Km=(e,t)=>Pn("/api/bench/finish",{run:e,batch:t});var ae=(e,t)=>({name:e,label:t,unit:"mm"}),Mn=ae("height","Floor to brim"),Ss={name:"draft",label:"Draft angle of the wall",unit:"\xB0",optional:!0},nu={block:{words:"Box, loaf or slab",measures:[ae("length","Longer side at the brim"),ae("width","Shorter side"),Mn,Ss,{...ae("corner_radius","Corner radius"),optional:!0}]},frustum:{words:"Round cup",measures:[ae("floor_diameter","Across the floor"),ae("brim_diameter","Across the brim"),Mn]},fluted_cup:{words:"Fluted cup",measures:[ae("floor_diameter","Across the floor"),ae("brim_diameter","Across the brim"),Mn,{name:"flutes",label:"Flutes",unit:"",count:!0},ae("flute_depth","Depth of a flute")]},polygon:{words:"Regular polygon",measures:[{name:"sides",label:"Sides",unit:"",count:!0},ae("across_flats","Across the flats"),Mn,Ss]},dome:{words:"Bowl",measures:[ae("diameter","Across the brim"),Mn]},half_ball:{words:"Half ball",measures:[ae("diameter","Across the brim")]},ball:{words:"Ball",measures:[ae("diameter","Across")]},half_ring:{words:"Half ring",measures:[ae("centre_diameter","Ring, middle to middle of the tube"),ae("tube_diameter","Across the tube")]},turned_ring:{words:"Ring with a post",measures:[ae("outer_floor_diameter","Cup, across the floor"),ae("outer_brim_diameter","Cup, across the brim"),ae("post_floor_diameter","Post, at its foot"),ae("post_brim_diameter","Post, at its top"),Mn]},turned_profile:{words:"Round, by its wall from the side",measures:[],points:{columns:[ae("height","Height"),ae("radius","Middle to wall")],least:2,words:"From the lowest point up to the brim: how high, and from the middle line out to the wall, half the width there. A round floor begins with 0 from the middle; a flat one with half its width."}},outline:{words:"Any outline, straight up",measures:[Mn,Ss],points:{columns:[ae("x","From the left"),ae("y","From below")],least:3,words:"The corners of the brim, one after the other as one walks round it. Draw a rectangle round the brim and measure from its left side and from its lower side."}},heart:{words:"Heart",measures:[ae("side","Straight edge, tip to round"),Mn,Ss]}},Vm=Object.fromEntries(Object.entries(nu).map(([e,{words:t}])=>[e,t])),Vo=e=>nu[e]?.measures??[],Bn=e=>nu[e]?.points;var ou=(e,t)=>String($(e,t)??"").trim(),Gi=e=>ou(e,"/shape/kind"),St=(e,t)=>$(e,`/${t}`)!==void 0,iu=e=>["body","skin"].includes(ou(e,"/mesh/role"));function nt(e,t){let n=$(e,t);return Array.isArray(n)?n:[]}function Qm(e,t){return(Bn(Gi(e))?.columns??[]).map(({name:o})=>String($(t,`/${o}`)??"").trim())}function Yi(e){return nt(e,"/shape/points").flatMap((t,n)=>Qm(e,t).every(Boolean)?[n]:[])}function As(e){let t=n=>n.some(Boolean)&&!n.every(Boolean);return nt(e,"/shape/points").flatMap((n,o)=>t(Qm(e,n))?[o]:[])}var ru=e=>nt(e,"/water/weighings").flatMap((t,n)=>String(t).trim()?[n]:[]);function Gm(e){let t=e,n=(o,i)=>{if(!Array.isArray($(t,o)))return;let r=i.map(l=>$(e,`${o}/${l}`));t=P(t,o,r)};return Bn(Gi(e))&&n("/shape/points",Yi(e)),n("/water/weighings",ru(e)),t}function Ds(e,t){let[,n,o,i]=/^(\/shape\/points|\/water\/weighings)\/(\d+)(.*)$/.exec(t)??[];if(!n)return t;let r=n==="/shape/points"?Yi(e):ru(e);return`${n}/${r[Number(o)]??o}${i}`}function Zi(e){let t=[],n=i=>ou(e,i)!=="",o=(i,r)=>{i||t.push(r)};if(St(e,"shape")){let i=Gi(e);o(i!=="","the shape");for(let{name:l,label:d,optional:c}of Vo(i))o(c||n(`/shape/${l}`),d.toLowerCase());let r=Bn(i);r&&o(Yi(e).length>=r.least,`${r.least} points at least`)}if(St(e,"water")){o(n("/water/temperature"),"the water's temperature"),o($(e,"/water/filled_to")!==void 0,"how far the water was filled");for(let i of["depth","below_brim"])o($(e,`/water/filled_to/${i}`)===void 0||n(`/water/filled_to/${i}`),"the water's line");o(n("/water/weighed_in"),"what was weighed"),o(ru(e).length>0,"a weighing of water")}return!iu(e)&&!St(e,"mesh")&&o(n("/cavities"),"how many cavities one mould has"),t}var Ve=e=>e.slice(0,e.lastIndexOf("/")+1),ot=e=>e.slice(e.lastIndexOf("/")+1),gn=(e,t)=>{let n=Ve(e);return n?ev(n+t):t};function ev(e){let t=[];for(let n of e.split("/"))n===".."?t.pop():n!=="."&&t.push(n);return t.join("/")}function At(e,t){return(e.toLowerCase().replaceAll(/[^a-z0-9]+/g,"_").replace(/^_+|_+$/g,"").slice(0,60)||"mine")+t}function Qo(e,t){let[,n,o]=/^(.*?)((?:\.(?:run|order|formula|fats|tips))?\.\w+)$/.exec(e)??["",e,""];for(let i=1;;++i){let r=i===1?e:`${n}_${i}${o}`;if(!t.some(l=>l.file===r))return r}}var tv=["mould","formula","run","file","own_fats","own_tips"];function su(e,t=""){return e===null||typeof e!="object"?[]:Object.entries(e).flatMap(([n,o])=>{let i=`${t}/${n}`;return typeof o!="string"?su(o,i):tv.includes(n)?[i]:[]})}function au(e,t){let[n,o]=[e,t];for(let i of["/$schema","/id",...su(e)])[n,o]=[P(n,i,void 0),P(o,i,void 0)];return JSON.stringify(n)===JSON.stringify(o)}function lu(e,t){let n=["/id",...su(e)].filter(o=>$(e,o)!==$(t,o));return o=>n.reduce((i,r)=>$(i,r)===$(e,r)?P(i,r,$(t,r)):i,o)}var bo={name:"run",list:"runs",called:"name",has_id:!0,new_name:({shipped:e,file:t,now:n})=>e?ot(t):At(String(n.name),".run.json"),written:e=>e,is_begun:()=>!0},wo={name:"order",list:"orders",called:"for",has_id:!0,new_name:({now:e})=>At(String(e.for??"order"),".order.json"),written:e=>e,is_begun:()=>!0},Go={name:"formula",list:"formulas",called:"name",has_id:!1,new_name:({shipped:e,file:t,now:n})=>e?ot(t):At(String(n.name),".formula.json"),written:e=>e,is_begun:()=>!0},uu=(e,t,n)=>({name:e,list:t,called:n,has_id:!1,new_name:({file:o})=>ot(o),written:o=>o,is_begun:()=>!0}),Xi=uu("studio","studios","name"),Vt=uu("fats","fats"),Fn=uu("tips","tips","title"),Qe={name:"mould",list:"moulds",called:"name",has_id:!1,new_name:({now:e})=>At(String(e.name),".json"),written:e=>({...Gm(e),name:String(e.name??"").trim()}),is_begun:e=>St(e,"shape")||St(e,"mesh")};var Ym={},Zm={kind:bo,id:"",file:"",version:null,shipped:!1,now:Ym,saved:Ym,unanswered:[]},Fe={view:"reading",came_from:"set-up",removed:[],formula_of:"pour",fats:[],catalogue:[],own_tips:{},own_fats:{},own_moulds:{},run:Zm,formulas:{},beside:{},past:[],future:[],quote_wish:{figure:""},is_old:!1,dangers:{run:[],apart:[]},list_complaint:"",list_told:"",bench:{run:"",batches:[],complaints:[],acts:[]},record:{run:"",batches:[],acts:[]},new_formula:{name:"",copied:""},new_order:"",printing:{paper:localStorage.getItem("paper")==="Letter"?"Letter":"A4",batch:0,is_working:!1,told:""},touched:new Set,has_asked:!1,open:new Set(iv()),folded:new Set,units:nv(),announcement:""},a=Fe;function nv(){let e=localStorage.getItem("units");return e==="metric"||e==="us"?e:"both"}var du=e=>`numbers ${String(e.now.id??e.file)}`,ov=e=>({numbers:localStorage.getItem(du(e))??void 0,figure:""});function er(e){h({quote_wish:{...Fe.quote_wish,...e}});let{numbers:t}=Fe.quote_wish;t?.trim()?localStorage.setItem(du(Fe.run),t):localStorage.removeItem(du(Fe.run))}var Xm="set-up ";function iv(){try{let e=JSON.parse(localStorage.getItem("parts")??"[]");return Array.isArray(e)?e.filter(t=>typeof t=="string"):[]}catch{return[]}}function rv(){let e=[...Fe.open].filter(t=>t.startsWith(Xm));localStorage.setItem("parts",JSON.stringify(e))}function h(e){Object.assign(Fe,e),Q()}var B=e=>h({announcement:e});function v(e,t){Object.assign(e,t),Q()}function Qt(e,t){let{[e]:n,...o}=Fe.formulas;h({formulas:t?{...o,[e]:t}:o})}function He(e,t){let n=new Set(Fe[e]);n.delete(t)||n.add(t),h({[e]:n}),t.startsWith(Xm)&&rv()}function Yo(e=Zm){h({run:e,formulas:{},beside:{},touched:new Set,has_asked:!1,past:[],future:[],dangers:{run:[],apart:[]},changed_beside:void 0,fault:void 0,plan:void 0,quote_wish:ov(e),quoted:void 0,run_days:void 0,complaint:void 0,finding:void 0,typed:void 0,measured:void 0})}function le(e){Fe.open.has(e)||h({open:new Set(Fe.open).add(e)})}function yo({list:e,called:t},n,o={}){if(!Fe.files)return;let i=Fe.files[e].findIndex(d=>d.file===n),r={...i<0?{}:Fe.files[e][i],file:n,name:String((t&&o[t])??""),note:String(o.note??""),shipped:!1},l=Fe.files[e].filter(d=>d.file!==n);l.splice(i<0?l.length:i,0,r),h({files:{...Fe.files,[e]:l}})}var sv=1e4,cu=sessionStorage.getItem("tab")??crypto.randomUUID();sessionStorage.setItem("tab",cu);var Ps=[],Zo=()=>`bench ${a.files?.folder??""}`;function it(){try{return[...JSON.parse(localStorage.getItem(Zo())??"[]"),...Ps]}catch{return Ps}}function pu(e){try{e.length?localStorage.setItem(Zo(),JSON.stringify(e)):localStorage.removeItem(Zo()),Ps=[]}catch{Ps=e}}var av=(e,t)=>e.run===t.run&&e.batch===t.batch&&e.key===t.key;function ef(e){let t={...e,id:crypto.randomUUID(),tab:cu,at:Date.now()};pu([...it().filter(n=>!av(n,t)),t])}var Os=e=>pu(it().filter(t=>!e(t))),tf=(e,t)=>pu(it().map(n=>n.run===e?{...n,run:t}:n)),mu=()=>it().find(e=>e.tab===cu||Date.now()-e.at>sv);var me=["pour","pipe","apart"],ye=["studio","own_fats","own_tips"],Ms=e=>ye.includes(e);var fu=e=>[...new Set(e.flatMap(t=>a.formulas[t]??[]))],hu=()=>ye.flatMap(e=>a.beside[e]??[]),nf=e=>e.filter(t=>t.theirs),_n=e=>nf([...fu(e==="apart"?["apart"]:["pour","pipe"]),...hu()])[0],Bs=()=>[a.run,...fu(me),...hu()].filter(e=>e.is_taken&&!e.theirs),Fs=()=>nf([a.run,...fu(me),...hu()]);var tr=()=>a.formulas.apart?"apart":"run",of=e=>h({dangers:{...a.dangers,[tr()]:e}});function gu(e){let t=e.cautions.filter(n=>n.severity==="danger");of(t.map(({text:n,topic:o,batter:i,batch_pieces:r})=>({text:n,is_of_heat:o==="heat",batter:i,batch_pieces:r})))}function rf(e){e.lye_heavy&&of([{text:H(e),is_of_heat:!1}])}var sf={};function Dt(e,t){(sf[e]??=[]).push(t)}function ke(e,t){for(let n of sf[e]??[])n(t)}async function gt({kind:e,name:t,text:n,from:o,goes_on:i,about_to:r,is_own:l}){for(;;){let{runs:d=[],orders:c=[],formulas:p=[],moulds:m=[],studios:_=[],fats:b=[],tips:w=[]}=a.files??{},x=Qo(t,[...d,...c,...p,...m,..._,...b,...w]);r?.(x);let K=await lv({file:x,version:null,text:n,from:o,goes_on:i});if(yo(e,x,we(K.there.text)??{}),K.is_new||l?.(K.there))return K.there}}async function lv(e){try{return{is_new:!0,there:await zo(e)}}catch(t){if(!(t instanceof y)||t.status!==409)throw t;return{is_new:!1,there:t.answer}}}var Cs=e=>`unsaved ${e.name} ${a.files?.folder??""} `;function vo({kind:e,id:t,file:n,version:o,shipped:i,now:r},l){if(e.is_begun(r))try{let d={id:t,file:n,version:o,shipped:i,text:re(r),copy:l};localStorage.setItem(Cs(e)+t,JSON.stringify(d))}catch{}}function _u(e,t){try{return JSON.parse(localStorage.getItem(Cs(e)+t)??"null")??void 0}catch{return}}var Cn=(e,t)=>localStorage.removeItem(Cs(e)+t),af=()=>Object.keys(localStorage).some(e=>e.startsWith("unsaved "));function Ls(e){let t=Cs(e);return Object.keys(localStorage).flatMap(o=>o.startsWith(t)?[o.slice(t.length)]:[]).sort().flatMap(o=>_u(e,o)??[])}var uv=300,Y=e=>e.now!==e.saved;function ko(e,t,n=crypto.randomUUID()){return{kind:e,id:n,file:"",version:null,shipped:!1,now:t,saved:void 0,unanswered:[]}}async function Ce(e,t,n=t){let o=await bm(t),i=dv(e,JSON.parse(o.text),o.shipped),r=_u(e,n),l=r?.copy&&o.shipped?await cv(e,r,i):void 0;if(l)return Cn(e,n),Ce(e,l);let{version:d,shipped:c=!1}=o,p={kind:e,id:n,file:t,version:d,shipped:c,now:i,saved:i,unanswered:[]};return r&&pv(p,r,o),p}var dv=(e,t,n=!1)=>e.has_id&&!n&&t.id===void 0?{...t,id:crypto.randomUUID()}:t;async function cv(e,t,n){if(!a.files?.[e.list].some(r=>r.file===t.copy))return;let o=we(t.text),i=we((await Me(t.copy)).text);if(!(!o||!i||re(o)===re(n)))return au(e.written(o),i)?t.copy:void 0}function pv(e,t,n){let o=we(t.text);if(!o||re(o)===re(e.now))return Cn(e.kind,e.id);v(e,{now:o}),!(t.version===n.version||n.shipped)&&(v(e,{version:t.version}),hf(e,n))}function Re(e,t){let n=e.now;v(e,{now:t,failed:void 0,...e.is_taken?{set_aside:void 0,is_taken:void 0}:{}}),vo(e),ke("edited",{file:e,before:n})}var lf=new WeakMap,$u=async e=>lf.get(e),Gt=e=>uf(e,()=>mv(e)),Ln=e=>uf(e,()=>e.shipped?df(e,cf):Promise.resolve());function uf(e,t){let n=$u(e).then(t);return lf.set(e,n.catch(()=>{})),n}async function mv(e){!Y(e)||e.theirs||await df(e,e.shipped||!e.file?cf:pf)}async function df(e,t){v(e,{failed:void 0});try{await t(e)}catch(n){throw n instanceof y&&v(e,{failed:H(n.complaint)}),n}}async function cf(e){let{kind:t,id:n,now:o}=e,i=e.shipped?e.file:void 0,r=t.written(o),l=await gt({kind:t,name:t.new_name(e),text:re(r),from:i,goes_on:i!==void 0&&t.name==="run",about_to:m=>vo(e,m),is_own:({text:m})=>i!==void 0&&au(r,we(m)??{})}),d=JSON.parse(l.text),c=lu(r,d),p=e.now===o?d:c(e.now);Cn(t,n),v(e,{id:l.file,file:l.file,version:l.version,shipped:!1,now:p,saved:d}),Y(e)&&vo(e),i!==void 0&&ke("copied",{file:e,from:i,renamed:c})}async function pf(e){let{version:t,now:n}=e,o=re(e.kind.written(n));v(e,{unanswered:[...new Set(e.unanswered).add(o)]});try{Is(e,n,(await zo({file:e.file,version:t,text:o})).version)}catch(i){if(!(i instanceof y)||i.status!==409)throw i;mf(e,i.answer),Y(e)&&!e.theirs&&await pf(e)}}function Is(e,t,n){v(e,{saved:t,version:n,theirs:void 0,failed:void 0,unanswered:[]}),Y(e)?vo(e):Cn(e.kind,e.id),yo(e.kind,e.file,t)}function mf(e,{version:t,text:n}){if(n===re(e.kind.written(e.now)))return Is(e,e.now,t);let o=n!==null&&e.unanswered.includes(n);if(v(e,{unanswered:[]}),o)return v(e,{version:t,saved:void 0,theirs:void 0});let i=Y(e)||e.theirs?void 0:we(n);i?fv(e,i,t):hf(e,{version:t,text:n})}function fv(e,t,n){ke("giving_way",{file:e}),v(e,{set_aside:e.now,is_taken:!0,now:t}),Is(e,t,n),B(`${e.file} was changed outside this page, and stands here as it is now.`),ke("gave_way",{file:e})}var ff=e=>v(e,{set_aside:void 0,is_taken:void 0});function hf(e,{version:t,text:n}){v(e,{theirs:{version:t,text:n}}),vo(e),B(n===null?`${e.file} was deleted outside this page. Save it again, or leave it deleted?`:`${e.file} was changed outside this page. Which version do you want to keep?`),ke("conflict",{file:e})}function gf(e){if(!e.theirs)return;let t=we(e.theirs.text);if(!t){let n=`what is in ${e.file} now is no ${e.kind.name}; keep what is on this page`;return v(e,{failed:n})}ke("giving_way",{file:e}),v(e,{set_aside:e.now,now:t}),Is(e,t,e.theirs.version),ke("gave_way",{file:e})}function _f(e){e.theirs&&(v(e,{version:e.theirs.version,saved:void 0,theirs:void 0,failed:void 0}),vo(e),ke("unwritten",{file:e}))}var xo=({theirs:e})=>e?.text===null;function $f(e){xo(e)&&(Cn(e.kind,e.id),v(e,{saved:e.now,theirs:void 0,failed:void 0}),B(`${e.file} stays deleted.`),ke("left_deleted",{file:e}))}function bf(e){if(!e.set_aside)return;let{set_aside:t,now:n}=e,o=e.is_taken;Re(e,t),v(e,{set_aside:o?void 0:n})}var wf=e=>(e.theirs??e).version;function yf(e,t){v(e,{id:t,file:t}),ke("renamed",{file:e,renamed:n=>n})}async function vf(e){let{version:t,text:n}=await Me(e.file),o=we(n);if(!o||e.theirs||t===e.version)return;let i=lu(e.now,o);if(Y(e))return v(e,{version:t,now:i(e.now),saved:o});v(e,{version:t,now:o,saved:o}),ke("renamed",{file:e,renamed:i})}var kf=e=>e.shipped||!e.file?[]:[[e.file,wf(e)]];async function bu(e,t,n,o){let i=e.file,r=()=>wf(e)===t&&e.file===i;if(!r()||(await $u(e),!r()))return!1;o(),await wu();let l=await hv(i,n);return await $u(e),r()&&(mf(e,l),Y(e)&&!e.theirs&&ke("unwritten",{file:e})),!0}async function hv(e,t){let n=await t(e);return n===null?{version:n,text:null}:Me(e)}var wu=()=>new Promise(e=>setTimeout(e,uv));var gv=400,_v=2e3,vu=new WeakMap;function Tf(e,t){clearTimeout(vu.get(e)),vu.set(e,window.setTimeout(()=>{Yt(e)},t))}var In=(e=a.run)=>Tf(e,gv),$v=e=>e===a.run||e===a.order?.open;async function Yt(e=a.run){clearTimeout(vu.get(e));try{await Gt(e),Y(e)&&!e.theirs&&$v(e)&&In(e)}catch(t){if(!(t instanceof y))throw t;t.may_pass&&Tf(e,_v)}}async function Pt(){for(let e of[a.run,a.order?.open])e?.file&&Y(e)&&await Yt(e)}var xf=Promise.resolve(),yu=0;function Zt(){if(!yu&&!bv().length)return;++yu;let e=xf.then(wv).finally(()=>--yu);return xf=e.catch(()=>{}),e}var bv=()=>[...me.map(e=>a.formulas[e]),...ye.map(e=>a.beside[e])].filter(e=>e!==void 0&&Y(e)&&!e.theirs);async function wv(){for(let e of me){let t=a.formulas[e];!t||!Y(t)||t.theirs||(t.shipped&&e!=="apart"&&await Ln(a.run),await Gt(t))}for(let e of ye){let t=a.beside[e];t&&Y(t)&&!t.theirs&&await Gt(t)}}var Ot=e=>gn(a.run.file,e);function Ge(e,t){let n=Ot(e);return t?.some(o=>o.file===n)?n:e}function Rf(e){let t=a.run.now,n=t.pour,o=t.losses,i=n?.moulds_owned===void 0?{}:{moulds_owned:n.moulds_owned},r=Ge(String(n?.mould??""),a.files?.moulds);return{file:Qo("trial.run.json",a.files?.runs??[]),run:{schema:"brimwright.run/2",name:String(t.name??""),sell:t.sell??"",...t.spoilage===void 0?{}:{spoilage:t.spoilage},pour:{mould:r,...i,formula:e,line:n?.line??{}},losses:{pour:o?.pour??{}},scales:t.scales??{},...yv(t)}}}function yv(e){let t={};for(let n of["cut","pots","batch"])e[n]!==void 0&&(t[n]=e[n]);if(t.batch){let{whippings:n,...o}=t.batch;t.batch=o}return t}var Wn=({lines:e})=>Array.isArray(e)?e:[];function $n(e){let t=Wn(e);return t.length>0&&t.every(({run:n,pieces:o})=>n&&typeof o=="number")}var Mt=new Map,nr=new Set,vv={changed:{},unreadable:[]},Xo=()=>new Set([...me.flatMap(e=>a.formulas[e]??[]),...ye.flatMap(e=>a.beside[e]??[])]);function ei(){let e=xv(),t=new Set([...Xo()].map(({file:o})=>o));for(let o of Mt.keys())!e.has(o)&&!t.has(o)&&Mt.delete(o);for(let o of nr)e.has(o)||nr.delete(o);let n=[...e].filter(o=>!Mt.has(o));return n.length?kv(n):void 0}async function kv(e){for(let[t,n]of await Sf(e))Mt.has(t)||Mt.set(t,n)}async function Sf(e){let t=e.filter(o=>!nr.has(o)),n=t.length?await qi(new Map(t.map(o=>[o,null]))):vv;return Tu(n.unreadable),new Map(e.map(o=>[o,n.changed[o]??null]))}var ku=async e=>(await Sf([e])).get(e)??null,xu=()=>new Map([...Mt].filter(([e])=>!nr.has(e)));function xv(){let e=new Set,t=o=>{typeof o!="string"||!o||(e.add(Ot(o)),o.includes("..")||e.add(o))},n=a.run.now;e.add(Ot("studio.json")),t($(n,"/pour/mould")),t($(n,"/pipe/beads/own_tips"));for(let o of Array.isArray(n.decorations)?n.decorations:[])t($(o,"/mould"));for(let o of["pour","pipe"])a.formulas[o]||t($(n,`/${o}/formula`));for(let{file:o,now:i}of Xo()){let r=i.own_fats;typeof r=="string"&&r&&e.add(Ve(o)+r).add(r)}t($(a.beside.studio?.now,"/own_tips"));for(let o of Tv())e.add(o);for(let o of ye)e.delete(a.beside[o]?.file??"");return e}function Tv(){let{open:e}=a.order??{},t=new Set(e?Wn(e.now).map(({run:p})=>gn(e.file,p)):[]),{runs:n=[],formulas:o=[],moulds:i=[],fats:r=[],tips:l=[]}=a.files??{},d=[...n,...o,...i,...r,...l].filter(({shipped:p})=>!p),c=-1;for(;c!==t.size;){c=t.size;for(let{file:p,used_by:m=[]}of d)m.some(_=>t.has(_))&&t.add(p)}return e&&t.size&&t.add(gn(e.file,"studio.json")),t.delete(a.run.file),t}function Af(e,{changed:t}){let n=Object.keys(t).filter(o=>Mt.has(o)&&Mt.get(o)===e.get(o));for(let o of n)Mt.set(o,t[o]);return n}var Tu=e=>e.forEach(t=>nr.add(t));function Df(){return[...Xo()].flatMap(({file:e,version:t})=>{let n=Mt.get(e)??t;return Mt.delete(e),n===t?[]:[e]})}var Pf=0,To=()=>Pf;function Ru(e){++Pf,h({is_old:!0,changed_beside:e})}var Rv=1e3,Sv=450,Ws=!1,Ro=!1,Su=0;function ce(){h({is_old:!0}),Ws?Ro=!0:ti()}async function ti(){if(Ws){Ro=!0;return}Ws=!0,Of(!1);try{do Ro=!1,await Av();while(Ro)}finally{Ws=!1,Of(!0)}}async function Bf(){let{run:e}=a,t={file:e.file,run:e.now},n=await wm(t)?.catch(()=>{});!n||e!==a.run||a.plan||af()||(h({plan:n,planned:t}),gu(n))}var Of=e=>{document.documentElement.dataset.settled=String(e)};function Mf(){let{run:e}=a,{apart:t}=a.formulas,{file:n,now:o}=e;return()=>{let i=e===a.run&&(n===e.file||o===e.now);return t===a.formulas.apart&&(t!==void 0||i)}}async function Av(){let e=Mf();try{let t=Zt();t&&await t;let n=ei();n&&await n,e=Mf();let{apart:o}=a.formulas;if(_n(o?"apart":"run"))return h({is_old:!0});let i=To(),r=o?Rf(o.file):{file:a.run.file,run:a.run.now},l=await gs(r);if(window.clearTimeout(Su),!e())return void(Ro=!0);h({plan:l,planned:r,complaint:void 0}),gu(l);let d=i===To();h({is_old:Ro||!d}),d&&h({changed_beside:void 0})}catch(t){if(!(t instanceof y))throw t;if(!e())return void(Ro=!0);Dv(t)}}function Dv(e){h({is_old:!0}),window.clearTimeout(Su);let t=()=>{h({complaint:e.complaint}),rf(e.complaint)};a.complaint||!a.plan?t():Su=window.setTimeout(t,Sv),e.may_pass&&window.setTimeout(ce,Rv)}var Ff=2e3,rt=e=>h({bench:{...a.bench,...e}}),Pv=()=>rt({acts:it()});addEventListener("storage",({key:e})=>{e===Zo()&&Pv()});function Es(){let{file:e}=a.run;!e||a.bench.run===e||(h({bench:{run:e,batches:[],complaints:[],acts:it()}}),bn().then(Pu))}function Cf(e){let{file:t}=a.run;tf(e,t),a.bench.run===e&&rt({run:t,acts:it()}),a.bench.run===t&&bn()}function Lf(){let{run:e,version:t}=a.bench;return t===void 0||e!==a.run.file?void 0:{run:e,version:t}}var or=0;async function bn(){let{run:e}=a.bench,t=or;try{let n=await qm(e);if(e!==a.bench.run)return;if(t!==or)return await bn();If(n)}catch(n){if(!(n instanceof y))throw n;if(e!==a.bench.run)return;rt({failed:H(n.complaint)}),Wf(n)&&setTimeout(()=>a.bench.failed!==void 0&&void bn(),Ff)}}var If=({batches:e,version:t,complaints:n=[]})=>rt({batches:e,version:t,complaints:n.map(({line:o})=>o),failed:void 0}),Wf=({may_pass:e,status:t})=>e||t>=500||[401,403].includes(t),En=e=>a.bench.batches.find(t=>t.batch===e),Du=e=>a.bench.acts.filter(({run:t,batch:n})=>t===a.bench.run&&n===e),Nn=e=>Du(e).length>0;function jn(e,t){let n=Du(e).find(i=>i.key===t),o=En(e)?.ticks[t]!==void 0;return{is_done:n?.done??o,is_waiting:n!==void 0}}function So(e){let t=Du(e).find(n=>n.reading!==void 0);return(t?t.reading:En(e)?.weigh_cup)??""}function Ef(e,t,n){let{run:o}=a.bench,r=En(e)!==void 0||!a.planned?void 0:re(a.planned.run);ef({run:o,batch:e,seen:t,text:r,...n}),rt({acts:it(),chosen:e,told:void 0}),Pu()}var Nf=(e,t,n,o)=>Ef(e,t,{key:n,done:o}),jf=(e,t,n)=>Ef(e,t,{reading:n||null}),Au=!1;async function Pu(){if(!Au){Au=!0;try{await navigator.locks.request(Zo(),Ov)}finally{Au=!1}it().length&&setTimeout(()=>{Pu()},Ff)}}async function Ov(){for(let e=mu();e;e=mu())if(!await Mv(e))return}async function Mv(e){let{id:t}=e;try{let n=await Bv(e);return++or,Os(o=>o.id===t),Fv(n,e.run),!0}catch(n){if(!(n instanceof y))throw n;return Wf(n)?(rt({unsent:H(n.complaint)}),!1):(await Cv(e,n),!0)}}function Bv({run:e,text:t,batch:n,seen:o,key:i,done:r,reading:l}){let d={run:e,text:t,batch:n,seen:o};return i!==void 0?Um({...d,key:i,done:r??!1}):zm({...d,reading:l??null})}function Fv(e,t){let n=it();if(t!==a.bench.run)return rt({acts:n,unsent:void 0});let i=[...a.bench.batches.filter(r=>r.batch!==e.batch),e].sort((r,l)=>r.batch-l.batch);rt({acts:n,batches:i,unsent:void 0})}async function Cv(e,{complaint:t}){++or,Os(o=>o.run===e.run&&o.batch===e.batch);let n=`Not taken: ${H(t)}.`;rt({acts:it(),unsent:void 0,told:{batch:e.batch,words:n}}),B(n),ce(),await bn()}async function ir(e){let{run:t}=a.bench;await Hf(e,async()=>{let n=await Jm(t,e);return Os(o=>o.run===t&&o.batch===e),n})}var Ou=e=>Hf(e,()=>Km(a.bench.run,e));async function Hf(e,t){let{run:n}=a.bench;try{let o=await t();if(++or,n!==a.bench.run)return;If(o),rt({acts:it(),told:void 0,chosen:e})}catch(o){if(!(o instanceof y))throw o;rt({told:{batch:e,words:H(o.complaint)}})}}var qf=e=>rt({chosen:e,told:void 0}),Uf=()=>rt({told:void 0});var Lv=300,Iv=1200,Ns="",zf=0;function rr(){let e={run:{file:a.run,now:a.run.now}};for(let t of me){let n=a.formulas[t];n&&(e[t]={file:n,now:n.now})}for(let t of ye){let n=a.beside[t];n&&(e[t]={file:n,now:n.now})}return e}function Ao(e=""){let t=performance.now();e&&e===Ns&&t-zf<=Iv&&a.past.length||Mu(rr()),h({future:[]}),Ns=e,zf=t}var Mu=e=>h({past:[...a.past,e].slice(-Lv)});function ni(e){Mu(Jf(rr(),e,()=>e.saved??{}))}function Jf(e,t,n){let o=Object.entries(e).map(([i,r])=>r.file===t?[i,{file:t,now:n(r.now)}]:[i,r]);return Object.fromEntries(o)}function Bu(e,t){let n=o=>o.map(i=>Jf(i,e,t));h({past:n(a.past),future:n(a.future)})}function sr(){let e=a.past.at(-1);e&&(h({past:a.past.slice(0,-1),future:[...a.future,rr()]}),Kf(e,"Undone"))}function Fu(){let e=a.future.at(-1);e&&(h({past:[...a.past,rr()],future:a.future.slice(0,-1)}),Kf(e,"Redone"))}function Kf(e,t){Ns="",h({typed:void 0});for(let n of[...ye,...me,"run"])Wv(n,e);B(t)}function Wv(e,t){let n=t[e];if(Ms(e))return Ev(e,n);let o=e==="run"?n?.file===a.run:a.formulas[e]!==void 0;!n||!o||(e!=="run"&&Qt(e,n.file),n.file.now!==n.now&&Re(n.file,n.now))}function Ev(e,t){t&&t.file===a.beside[e]&&t.file.now!==t.now&&Re(t.file,t.now)}var oi=e=>e===a.run||me.some(t=>a.formulas[t]===e)||ye.some(t=>a.beside[t]===e);Dt("giving_way",({file:e})=>{oi(e)&&(Ns="",Mu(rr()),h({typed:void 0}))});for(let e of["copied","renamed"])Dt(e,({file:t,renamed:n})=>Bu(t,n));var Nv=1200,Cu="",Vf=0;function ii(e,t=""){let n=performance.now(),o=t&&t===Cu&&n-Vf<=Nv&&e.past.length;v(e,{past:o?e.past:[...e.past,e.open.now],future:[]}),[Cu,Vf]=[t,n]}function js(e){let t=e.past.at(-1);t&&(v(e,{past:e.past.slice(0,-1),future:[...e.future,e.open.now]}),Qf(e,t,"Undone"))}function Hs(e){let t=e.future.at(-1);t&&(v(e,{past:[...e.past,e.open.now],future:e.future.slice(0,-1)}),Qf(e,t,"Redone"))}function Qf({open:e},t,n){Cu="",h({typed:void 0}),Re(e,t),B(n)}function Hn(e){return e==="run"?a.run:e==="order"?a.order?.open:Ms(e)?a.beside[e]:a.formulas[e]}var jv=e=>Hn(e)?.now,g=(e,t)=>$(jv(e),t),A=(e,t)=>String(g(e,t)??"");function X(e,t){let n=g(e,t);return Array.isArray(n)?n:[]}function fe(e,t,n){let o=g(e,t)??{};return Object.fromEntries(Object.entries(o).filter(([i])=>!n.includes(i)))}function Gf(e,t){e==="order"&&a.order?ii(a.order,t):Ao(t===void 0?"":`${e} ${t}`)}function Z(e,t,n){let o=Hn(e);!o||$(o.now,t)===n||(Gf(e,t),Re(o,P(o.now,t,n)))}function Yf(e,t){let n=Hn(e);n&&(Gf(e),h({typed:void 0}),Re(n,t(n.now)))}function Bt(e){Ao(),h({typed:void 0});for(let[t,n]of e){let o=Hn(t);o&&Re(o,n(o.now))}}var Lu=(e,t)=>{let{[e]:n,...o}=a.beside;h({beside:t?{...o,[e]:t}:o})};function qs(e){for(let t of ye)a.beside[t]===e&&Lu(t,void 0)}async function Hv(e,t){try{let n=await Ce(e,t);return Y(n)&&ni(n),n}catch(n){if(!(n instanceof y||n instanceof SyntaxError))throw n;return}}async function qn(e,t,n){let o=a.beside[e];if(o?.file===n)return o;let i=await Hv(t,n);return Lu(e,i),i&&Y(i)&&ke("unwritten",{file:i}),i?.theirs&&ke("conflict",{file:i}),i}var Xf=()=>Ot("studio.json");async function ri(e=!1){let t=Xf(),n=(a.files?.studios??[]).some(o=>o.file===t);a.beside.studio?.file!==t&&(n||e?await qn("studio",Xi,t):Lu("studio",void 0))}async function Us(){a.run.shipped&&await Ln(a.run);let e=Xf();await qn("studio",Xi,e)||(await qv(e),await qn("studio",Xi,e))}async function qv(e){try{await zo({file:e,version:null,text:re({schema:"brimwright.studio/1"})})}catch(t){if(!(t instanceof y)||t.status!==409)throw t}yo(Xi,e)}var Zf=(e,t)=>Ve(e.file)+t;async function Uv(e){try{return we((await Me(e)).text)!==void 0}catch(t){if(!(t instanceof y))throw t;return!1}}async function zs(e){let t=a.formulas[e];if(!t)return;t.shipped&&await Ln(t);let n=String($(t.now,"/own_fats")??"");if(n){let l=Zf(t,n);return qn("own_fats",Vt,await Uv(l)?l:n)}let o=(a.files?.fats??[]).find(l=>!l.shipped&&Ve(l.file)===Ve(t.file)),i={schema:"brimwright.fats/1",fats:[]},r=o?.file??await Wu(Vt,Zf(t,"my.fats.json"),i);return Z(e,"/own_fats",ot(r)),qn("own_fats",Vt,r)}async function Iu(){a.run.shipped&&await Ln(a.run);let e="/pipe/beads/own_tips",n=String($(a.run.now,e)??"")||String($(a.beside.studio?.now,"/own_tips")??"");if(n)return qn("own_tips",Fn,Ot(n));let o=Ve(a.run.file),i=(a.files?.tips??[]).find(d=>!d.shipped&&Ve(d.file)===o),r={schema:"brimwright.tips/2",tips:[]},l=i?.file??await Wu(Fn,`${o}my.tips.json`,r);return a.beside.studio?Z("studio","/own_tips",ot(l)):Z("run",e,ot(l)),qn("own_tips",Fn,l)}async function ar(e,t){await qn(e===Vt?"own_fats":"own_tips",e,t)&&h({held_open:t})}function Un(){let{view:e,held_open:t,beside:n}=a,o=e==="fats"?n.own_fats:e==="tips"?n.own_tips:void 0;return o&&o.file===t?o:void 0}async function Js(e,t){let n=e===Vt;await ar(e,await Wu(e,n?"my.fats.json":"my.tips.json",n?{schema:"brimwright.fats/1",fats:[t]}:{schema:"brimwright.tips/2",tips:[t]}))}async function Wu(e,t,n){let{file:o}=await gt({kind:e,name:t,text:re(n)});return yo(e,o),o}function eh(e,t){let n=(i,r)=>String($(i,r)??"").endsWith(ot(t));for(let i of me)e===a.beside.own_fats&&n(a.formulas[i]?.now,"/own_fats")&&Z(i,"/own_fats",e.file);let o="/pipe/beads/own_tips";e===a.beside.own_tips&&n(a.run.now,o)&&Z("run",o,e.file)}var Do=[],si=[],lr=()=>Do.at(-1),Nu=()=>si.at(-1);function Vs(e){Do=[...Do,e],si=[],h({list_told:e.words}),B(e.words)}async function nh(){let e=lr();e&&(await e.undo(),Do=Do.slice(0,-1),si=[...si,e],h({list_told:""}),B("Undone"),await _t())}async function oh(){let e=Nu();e&&(await e.redo(),si=si.slice(0,-1),Do=[...Do,e],h({list_told:e.words}),B("Redone"),await _t())}async function _t(){let[e,t]=await Promise.all([hs(),Xp()]);h({files:e,removed:t})}async function ih(e,t){let{$schema:n,...o}=JSON.parse((await Me(t.file)).text),i=`${t.name||ai(t.file)}, copy`,r={...o,...e.called&&{[e.called]:i},...e.has_id?{id:crypto.randomUUID()}:{}},l=e.called?e.new_name(ko(e,r)):At(i,ju(t.file)),{file:d}=await gt({kind:e,name:l,text:re(r),from:t.file});await _t();let c="";return Vs({words:`Copied ${t.name||t.file}.`,undo:async()=>c=await Ks(d,!0),redo:()=>Hi(c)}),d}var ju=e=>/(\.(run|order|formula|fats|tips))?\.json$/.exec(e)?.[0]??"",ai=e=>ot(e).slice(0,-ju(e).length||void 0),rh=(e,t)=>Ve(e)+t+ju(e),th=e=>[a.run,a.order?.open,...me.map(t=>a.formulas[t]),...ye.map(t=>a.beside[t])].find(t=>t?.file===e);async function sh(e,t,n){let o={name:t.name,note:t.note,stem:ai(t.file)};await Eu(e,t.file,n),await _t();let i=rh(t.file,n.stem);Vs({words:`Changed ${n.name||i}.`,undo:()=>Eu(e,i,o),redo:()=>Eu(e,t.file,n)})}async function Eu(e,t,{name:n,note:o,stem:i}){let r=th(t),l=r??await Ce(e,t),{note:d,...c}=l.now,p={...c,...o&&{note:o}},m=e.called?P(p,`/${e.called}`,n||void 0):p;if(re(m)!==re(l.now)&&(r&&oi(r)&&Ao(),r===a.order?.open&&a.order&&ii(a.order),Re(l,m),await Gt(l),l.theirs))throw new Error(`${t} was changed outside this page just now. Look at it again.`);let _=rh(t,i);if(_===t)return;let{renamed_in:b}=await Yp(t,_);r&&yf(r,_);for(let w of b){let x=th(w);x&&await vf(x)}}async function Ks(e,t){let{removed:n}=await Zp(e,t);a.run.file===e&&Yo(),a.order?.open.file===e&&h({order:void 0});let o=ye.map(i=>a.beside[i]).find(i=>i?.file===e);return o&&qs(o),n}async function ah(e,t){let n=await Ks(e.file,t);await _t(),Vs({words:`Removed ${e.name||e.file}.`,undo:()=>Hi(n),redo:async()=>n=await Ks(e.file,!0)})}async function lh({removed:e,file:t,name:n}){await Hi(e),await _t();let o="";Vs({words:`${n||t} is back.`,undo:async()=>o=await Ks(t,!0),redo:()=>Hi(o)})}async function uh({removed:e,file:t,name:n}){h({removed:await em(e),list_told:""}),B(`${n||t} is deleted for good.`)}async function zn(){for(let e of["pour","pipe"]){let t=$(a.run.now,`/${e}/formula`);typeof t=="string"&&t?await zv(e,Ge(t,a.files?.formulas)):Qt(e,void 0)}}async function zv(e,t){if(a.formulas[e]?.file===t)return;let n=me.map(o=>a.formulas[o]).find(o=>o?.file===t);if(Qt(e,n),!n)try{let o=await Hu(t);Qt(e,o),Y(o)&&ke("unwritten",{file:o}),o.theirs&&ke("conflict",{file:o})}catch(o){if(!(o instanceof y||o instanceof SyntaxError))throw o}}async function Hu(e){let t=await Ce(Go,e);return Y(t)&&ni(t),t}var ur=(e,t=0)=>e.map(n=>`M${n.map(([o,i])=>`${o.toFixed(2)} ${(t-i).toFixed(2)}`).join("L")}Z`).join("");function li(e){let t=new DataView(e).getUint32(12,!0),n=JSON.parse(new TextDecoder().decode(new Uint8Array(e,20,t))),o=r=>20+t+8+(n.bufferViews[n.accessors[r].bufferView].byteOffset??0),i=r=>n.accessors[r].count;return n.meshes.map(({name:r,primitives:[{attributes:l,indices:d,material:c}]})=>({name:r,positions:new Float32Array(e,o(l.POSITION),i(l.POSITION)*3),indices:new Uint32Array(e,o(d),i(d)),colour:n.materials[c].pbrMetallicRoughness.baseColorFactor}))}function ch(e,t,n="upright"){let[o,i,r]=n==="upright"?[1,2,1]:[2,1,-1],l=[],{positions:d,indices:c}=e;for(let p=0;p<c.length;p+=3){let m=[];for(let _=0;_<3;++_){let b=3*c[p+_],w=3*c[p+(_+1)%3],x=d[b+i]-t,K=d[w+i]-t;if(x>0==K>0)continue;let Oe=x/(x-K),mo=[1e3*(d[b]+Oe*(d[w]-d[b])),1e3*r*(d[b+o]+Oe*(d[w+o]-d[b+o]))];x>0?m.push(mo):m.unshift(mo)}m.length===2&&l.push([m[0],m[1]])}return l}function ph(e){let t=([i,r])=>`${i.toFixed(3)} ${r.toFixed(3)}`,n=new Map;for(let i of e){let r=t(i[0]);n.set(r,[...n.get(r)??[],i])}let o=[];for(let i of e){let r=[],l=n.get(t(i[0]))?.shift();for(;l;)r.push(l[0]),l=n.get(t(l[1]))?.shift();r.length>2&&o.push(r)}return o}function dr(e){let t=e.positions,[n,o,i,r,l,d]=[1/0,-1/0,1/0,-1/0,1/0,-1/0];for(let p=0;p<t.length;p+=3)i=Math.min(i,t[p]),r=Math.max(r,t[p]),l=Math.min(l,t[p+1]),d=Math.max(d,t[p+1]),n=Math.min(n,t[p+2]),o=Math.max(o,t[p+2]);let c=n+(o-n)*.50137;return{loops:ph(ch(e,c)),left:1e3*i,right:1e3*r,floor:1e3*l,brim:1e3*d,cut_y:-1e3*c}}function mh(e,t){let[n,o]=[t.floor/1e3,(t.brim-t.floor)/1e3];return[.999,.50137].map(r=>ph(ch(e,n+r*o,"level"))).reduce((r,l)=>dh(l)>1.001*dh(r)?l:r)}function dh(e){let[t,n]=[1/0,-1/0];for(let o of e)for(let[i]of o)[t,n]=[Math.min(t,i),Math.max(n,i)];return Math.max(0,n-t)}function qu(e,t){let[n,o]=[1/0,-1/0];for(let i of e.loops)i.forEach(([r,l],d)=>{let[c,p]=i[(d+1)%i.length];if(!(Math.min(l,p)>t||Math.max(l,p)<t))for(let m of l===p?[r,c]:[r+(t-l)/(p-l)*(c-r)])n=Math.min(n,m),o=Math.max(o,m)});return n<=o?[n,o]:[e.left,e.right]}var fh=40,Jv=2e3,Uu=0;async function hh(e){let t=await Jt({kind:"glb",gauge:e}),n=li(await t.arrayBuffer());return n.find(o=>o.name==="cavity")??n[0]}async function ui(e){let[t,n]=await Promise.all([On(e),hh(e)]),o=dr(n);return{gauge:t,outline:o,above:mh(n,o)}}async function Kv(e){let{pockets:t}=await On(e),n=t[0].brim_mm-t[0].floor_mm-.001,o=Array.from({length:fh},(i,r)=>`${(n*(r+1)/fh).toFixed(4)} mm`);return On({...e,depth:o})}function Ft(){Vv()}async function Vv(){let e=$(a.run.now,"/pour/mould");if(typeof e!="string")return;let t=++Uu,n=Ge(e,a.files?.moulds);try{let[o,i]=await Promise.all([Kv({file:n}),hh({file:n})]);t===Uu&&h({measured:{mould:n,gauge:o,outline:dr(i)},measuring_failed:void 0})}catch(o){if(t!==Uu)return;if(!(o instanceof y))throw o;h({measured:void 0,measuring_failed:o.message}),o.may_pass&&window.setTimeout(Ft,Jv)}}var zu=(e,t="")=>fs("GET",`/api/record?run=${encodeURIComponent(e)}&batch=${encodeURIComponent(t)}`),gh=e=>Pn("/api/record/begin",e),Qs=e=>Pn("/api/record/note",e);var Qv=1e4,Ku=2500,Vu=sessionStorage.getItem("tab")??crypto.randomUUID();sessionStorage.setItem("tab",Vu);var Gs=[],di=()=>`notes ${a.files?.folder??""}`;function wn(){try{return[...JSON.parse(localStorage.getItem(di())??"[]"),...Gs]}catch{return Gs}}function Qu(e){try{e.length?localStorage.setItem(di(),JSON.stringify(e)):localStorage.removeItem(di()),Gs=[]}catch{Gs=e}}var Ju=(e,t)=>e.batch===t.batch&&e.key===t.key,Jn=(e,t)=>a.record.acts.filter(n=>Ju(n,{batch:e,key:t})).at(-1);function _h(e){let t=wn(),n=t.filter(i=>Ju(i,e)).at(-1),o={...e,seen:n?.seen??e.seen,id:crypto.randomUUID(),tab:Vu,at:Date.now()};Qu([...t.filter(i=>!Ju(i,e)||i.was_sent&&!i.refused),o])}var Gu=e=>Qu(wn().map(e)),Ys=(e,t)=>Gu(n=>n.id===e?{...n,...t}:n),cr=e=>Qu(wn().filter(t=>!e(t))),Gv=({is_typed:e,lacks:t,refused:n,at:o})=>!n&&!t&&(!e||Date.now()-o>=Ku),Yu=()=>wn().find(e=>Gv(e)&&(e.tab===Vu||Date.now()-e.at>Qv));var $h=2e3,Le=e=>h({record:{...a.record,...e}}),ci=()=>Le({acts:wn()});addEventListener("storage",({key:e})=>{e===di()&&ci()});function Zs(){let{file:e}=a.run;!e||a.record.run===e||(h({record:{run:e,batches:[],acts:wn(),chosen:Yv(e)}}),Kn().then(pr))}function bh(e){a.record.run===e&&(Le({run:a.run.file}),Kn())}var wh=e=>`record ${e}`,Yv=e=>sessionStorage.getItem(wh(e))??void 0,ed=()=>a.record.run===a.run.file?a.record.version:void 0,Xu=0;async function Kn(){let{run:e,chosen:t}=a.record,n=Xu;try{let o=await zu(e,t);if(e!==a.record.run)return;if(n!==Xu||t!==a.record.chosen)return await Kn();let{batches:i,run_batches:r}=o.record;Le({batches:i,of:r??a.record.of,version:o.version,failed:void 0})}catch(o){if(!(o instanceof y))throw o;if(e!==a.record.run)return;Le({failed:H(o.complaint)}),yh(o)&&setTimeout(()=>a.record.failed!==void 0&&void Kn(),$h)}}var yh=({may_pass:e,status:t})=>e||t>=500||[401,403].includes(t);function Xs({record:e},t){if(++Xu,t!==a.record.run)return;let n=new Set(e.batches.map(({begun:d})=>d.id)),o=d=>n.has(d.begun.id),i=d=>e.batches.find(({begun:c})=>c.id===d.begun.id)??d,r=e.batches.filter(({begun:d})=>!a.record.batches.some(c=>c.begun.id===d.id)),l=[...a.record.batches.map(d=>o(d)?i(d):d),...r];Le({batches:l,of:e.run_batches??a.record.of})}function ea(){let{batches:e,chosen:t}=a.record;return e.find(({begun:n})=>n.id===t)??e.at(-1)}function mr(e){sessionStorage.setItem(wh(a.record.run),e),Le({chosen:e}),Kn()}var Po=(e,t)=>a.record.batches.filter(n=>n.number===e&&(!t||new Date(n.begun.begun_at)>=new Date(t))).at(-1),ta=({pieces:e,written:t})=>`${e} ${e===1?"piece":"pieces"}, ${t}`;function na({blanks:e,cured:t},n){let o=/^cured\.(.+)$/.exec(n)?.[1],i=o&&t?.find(({on:r})=>r===o);return o?i?ta(i):"":e?.find(r=>r.key===n)?.noted??""}function td(e,{key:t,text:n,value:o,is_left:i,lacks:r}){let l=na(e,t),d=Jn(e.begun.id,t);if(o===l&&!r&&(!d||!d.was_sent&&d.seen===l))return d&&cr(({id:m})=>m===d.id),ci();if(d?.value===o&&!d.lacks==!r&&(d.refused??!d.is_typed))return;let{run:p}=a.record;_h({run:p,batch:e.begun.id,key:t,text:n,value:o,seen:l,is_typed:!i,lacks:r}),ci(),i?pr():setTimeout(()=>{pr()},Ku+50)}var Vn=(e,t,n)=>td(e,{key:t,text:n,value:n,is_left:!0});function vh(e){let{refused:t,value:n}=e;if(!t)return;let o=t.is_asked?{confirmed:[n]}:{seen:t.noted??e.seen};Ys(e.id,{...o,refused:void 0}),ci(),pr()}function kh(e){cr(({id:t})=>t===e.id),ci()}var Zu=!1;async function pr(){if(!Zu){Zu=!0;try{await navigator.locks.request(di(),Zv)}finally{Zu=!1}wn().some(e=>!e.refused&&!e.lacks)&&setTimeout(()=>{pr()},$h)}}async function Zv(){for(let e=Yu();e;e=Yu())if(!await ek(e))return}var Xv=({batch:e,run:t})=>a.record.batches.some(({begun:n})=>n.id===e)?a.record.run:t;async function ek(e){let{id:t,batch:n,key:o,value:i,seen:r,confirmed:l}=e,d=Xv(e);Ys(t,{was_sent:!0});try{let c=await Qs({run:d,batch:n,act:t,set:{[o]:i||null},seen:{[o]:r||null},confirmed:l});return cr(p=>p.id===t),tk(e,c),Xs(c,d),Le({acts:wn(),unsent:void 0}),!0}catch(c){if(!(c instanceof y))throw c;return yh(c)?(Le({unsent:H(c.complaint)}),!1):(await nk(e,c),!0)}}function tk({batch:e,key:t},{record:n}){let o=n.batches.find(({begun:i})=>i.id===e);Gu(i=>i.batch!==e?i:i.key===t?o?{...i,seen:na(o,t)}:i:i.refused&&!i.refused.is_asked&&i.refused.noted===void 0?{...i,refused:void 0}:i)}async function nk({id:e,value:t},{complaint:n}){let{asks:o,choices:i,problem:r}=n,l=o==="seen"?i?.[0]?.seen??"":void 0,d=l===!0?"":l,c=o?r:H(n);d===t?cr(p=>p.id===e):Ys(e,{refused:{words:c,is_asked:o==="confirmed",noted:d}}),ci(),await Kn()}var oa=e=>a.record.acts.filter(t=>t.batch===e&&(t.refused??t.lacks)).length;async function ia(e,t){if(!e||!t)return;let n=e.blanks?e:await ok(e.begun.id),o=n?.blanks?.filter(nd)??[];n&&o.length===1&&Vn(n,o[0].key,t)}async function ok(e){try{return(await zu(a.record.run,e)).record.batches.find(({begun:t})=>t.id===e)}catch(t){if(!(t instanceof y))throw t;return}}var nd=({key:e})=>/^topping(-\d+)?\.cup$/.test(e);var fr=()=>h({own_fats:{}});function Qn(e){let t=hr(e);return Array.isArray(t)?[...t,...a.fats]:a.fats}function hr(e){let t=a.formulas[e],n=$(t?.now,"/own_fats");if(typeof n!="string"||!n.endsWith(".json")||t===void 0)return;let o=a.beside.own_fats;if(o&&[Ve(t.file)+n,n].includes(o.file))return Th(o.now)??"none";let i=`${t.file}
${n}`,r=a.own_fats[i];return r||(xh(i,"waiting"),ik(n,t.file).then(l=>xh(i,l)),"waiting")}var xh=(e,t)=>h({own_fats:{...a.own_fats,[e]:t}});async function ik(e,t){for(let n of new Set([Ve(t)+e,e])){let o=Th(await rk(n));if(o)return o}return"none"}var Th=e=>Array.isArray(e?.fats)?e.fats.map(sk):void 0;async function rk(e){try{return we((await Me(e)).text)}catch{return}}var sk=({id:e,name:t,saponification_value:n})=>({id:String(e??""),name:String(t??e??""),own:ak(n)});function ak(e){if(e===null||typeof e!="object")return String(e??"");let{low:t,high:n}=e;return`${String(t)} to ${String(n)}`}var pi=[],gr;function ra(){pi.length=0;for(let{file:e,shipped:t}of a.files?.moulds??[])t||pi.push(e);gr===void 0&&Sh()}function Rh(e){let t=a.own_moulds[e];return!t&&e!==gr&&!pi.includes(e)&&pi.push(e),gr===void 0&&pi.length&&Sh(),t}async function Sh(){for(;(gr=pi.shift())!==void 0;){let e=gr,t=await lk(e);h({own_moulds:{...a.own_moulds,[e]:t}})}}async function lk(e){try{let{pockets:t}=await On({file:e});return{brimful_ml:t[0].brimful_ml,cavities:t.length}}catch(t){if(!(t instanceof y))throw t;let{field:n,problem:o,remedy:i}=t.complaint;return{complaint:[n&&`${n.slice(1).replaceAll("/",", ")} `,o,i&&`; ${i}`].join("")}}}var Ph=()=>h({own_tips:{}}),od=!1;function _r(){return!a.tips&&!od&&(od=!0,dm().then(e=>h({tips:e}),Oh).finally(()=>od=!1)),a.tips??[]}function id(e){let t=Ot(e),n=a.beside.own_tips;if(n?.file===t)return Dh(n.now);let o=a.own_tips[t];return o||!e||a.typed?o??[]:(Ah(t,[]),Me(t).then(({text:i})=>Ah(t,Dh(we(i))),Oh),[])}var Ah=(e,t)=>h({own_tips:{...a.own_tips,[e]:t}});function Dh(e){let t=e?.tips;return(Array.isArray(t)?t:[]).map(n=>({name:String(n.name)}))}function Oh(e){if(!(e instanceof y))throw e}var sa=300,uk=5e3,Lh=2e3,dk=500,Mh=!1,$r=new AbortController,Ih=()=>$r.abort(),Wh=()=>document.visibilityState==="hidden";function aa(){if(Mh)return;Mh=!0;let e=async()=>{$r=new AbortController;let t=await ck($r).then(()=>Wh()?uk:sa,()=>$r.signal.aborted?sa:Lh);await Bh(sa),await Bh(t-sa,$r.signal),e()};e()}var Bh=(e,t)=>new Promise(n=>{if(e<=0||t?.aborted)return n();setTimeout(n,e),t?.addEventListener("abort",()=>n())}),Eh=()=>[a.run,...a.order?[a.order.open]:[],...a.mould?[a.mould.open]:[],...Xo()],rd=()=>{let e=Lf();return e&&{...e,record:ed()}},Nh=()=>new Map(Eh().flatMap(kf)),Fh=()=>JSON.stringify([[...Nh().keys()],[...xu().keys()],rd()?.run??null,ed()??null]);async function ck(e){let[t]=Df();t!==void 0&&await Ch(t);let[n,o]=[Nh(),xu()],i=new Map([...o,...n]),r=[...o].every(([c,p])=>i.get(c)===p),l=r&&!Wh()?await pk(i,e):await qi(i,rd());l.bench!==void 0&&await bn(),l.record!==void 0&&await Kn(),Tu(l.unreadable),await mk(n,l);let[d]=Af(o,r?l:await qi(o));d!==void 0&&await Ch(d)}async function pk(e,t){let[n,o]=[Fh(),Date.now()],i=window.setInterval(()=>{(Fh()!==n||Date.now()-o>tm+Lh)&&t.abort()},dk);try{return await nm(e,rd(),t.signal)}finally{window.clearInterval(i)}}async function mk(e,{changed:t}){let n=Xo();for(let o of Eh()){let i=e.get(o.file);i===void 0||!(o.file in t)||(n.has(o)?await fk(o,i):await bu(o,i,ku,()=>{}))}}async function fk(e,t){await bu(e,t,ku,()=>Ru(e.file))&&(fr(),ce())}async function Ch(e){Ru(e),await wu(),fr(),Ph(),h({measured:void 0}),Ft(),ra(),await Promise.all([zn(),ri(!0)]),ce()}async function Hh(e){let t=await $m();h({files:t});let n=_m(t,e.run);try{await Xt(n,n===e.run||!e.run?e.view:void 0)}catch(o){let i=o instanceof y?o.message:`The run opened last can no longer be read: ${String(o)}`;h({fault:i,view:"runs"}),localStorage.removeItem("run")}}async function qh(){let[e,t]=await Promise.all([lm(),um()]);h({fats:e,catalogue:t})}var hk=()=>new Promise(e=>setTimeout(e,400)),sd={};async function Xt(e,t="weigh"){if(!e)return h({view:"runs"});let n=sd={name:e},o=a.view;a.run.file&&Y(a.run)&&await Yt();let i=await Ce(bo,e);if(sd!==n||(Yo(i),Es(),await Promise.race([Bf(),hk()]),a.run!==i))return;a.view===o&&sd===n&&h({view:t}),localStorage.setItem("run",i.file),Y(i)&&(ni(i),In());let r=ti().finally(Ft);await Promise.all([r,zn(),ri()]),aa()}var jh=()=>(a.files?.studios??[]).some(e=>e.file==="studio.json");async function la(e){let t=a.run.now,n=t.losses??{},o={schema:"brimwright.run/2",id:crypto.randomUUID(),name:e.name,sell:e.sell,pour:{mould:e.mould,formula:e.formula}};e.slice&&(o.cut={bar:{thickness:e.slice},...jh()?{}:{kerf:""}}),jh()||(o.note=`Losses, scales and spoilage were taken over from "${String(t.name)}": check them.`,t.spoilage!==void 0&&(o.spoilage=t.spoilage),o.losses={pour:n.pour??{}},o.scales=t.scales??{},t.money&&!a.run.shipped&&(o.money=t.money));let{file:i}=await gt({kind:bo,name:At(e.name,".run.json"),text:re(o)});le("set-up pour"),e.slice&&le("set-up cut"),await Xt(i,"set-up")}var gk="examples/plain_bars.run.json";function Ye(e){fr();let t=mn(a.view)?a.view:a.came_from;h({view:"formula",came_from:t,formula_of:e,picking:void 0,typed:void 0})}async function br(e){let t=["pour","pipe"].find(n=>a.run.file&&a.formulas[n]?.file===e);if(t)return Ye(t);a.run.file||await Xt(gk,"reading"),await _k(e)}async function _k(e){let t={past:a.past,future:a.future};h({run_steps:t,past:[],future:[]});try{Qt("apart",await Hu(e))}catch(n){throw h({...t,run_steps:void 0}),n}h({plan:void 0,complaint:void 0}),Ye("apart"),ti()}async function $k(){let e=a.formulas.apart!==void 0;return await ua()?(h({view:e?"weigh":a.came_from,typed:void 0}),!0):!1}async function ua(){return a.formulas.apart?await bk()?(ti(),!0):!1:!0}async function bk(){try{await Zt()}catch(t){if(!(t instanceof y))throw t;return h({complaint:t.complaint}),!1}if(a.formulas.apart?.theirs)return B("Choose first which version of the formula to keep."),window.scrollTo(0,0),!1;Qt("apart",void 0);let e={...a.dangers,apart:[]};return h({dangers:e,...a.run_steps,run_steps:void 0,plan:void 0,complaint:void 0}),!0}async function Uh(e){let t=a.view==="formula"&&a.formulas[a.formula_of]===e,n=a.formulas.apart===e;for(let o of["pour","pipe"])a.formulas[o]===e&&Qt(o,void 0);n&&await ua(),t&&h({view:n?"formulas":"set-up",typed:void 0})}async function ad(e){let{file:t}=a.formulas.apart;await $k()&&Z("run",`/${e}/formula`,t)}var wk=e=>({schema:"brimwright.formula/2",name:e,fats:[],superfat:"",alkali:[],water:{},pour_temperature:""}),zh=e=>Kh(wk(e));async function Jh(e,t){let{$schema:n,...o}=JSON.parse((await Me(e)).text);await Kh({...o,name:t},e)}async function Kh(e,t){let n=At(String(e.name),".formula.json"),{file:o}=await gt({kind:Go,name:n,text:re(e),from:t});await br(o)}var yk=30,Vh=0,ld=!1,ud=!1;function dd(e,t,n){let o=t==="mesh"?a.mesh:void 0;h({mould:{way:t,title:n,open:e,is_old:!1,shapes:{},past:[],future:[]},mesh:o,typed:void 0}),pd()}var en=()=>h({mould:void 0,mesh:void 0}),mi=(e,t,n)=>dd(ko(Qe,e),t,n);async function Qh(e,t){let n=await Ce(Qe,e,t?crypto.randomUUID():e),o=String(n.now.name??e);t&&v(n,{now:{...n.now,name:""}}),dd(n,"form",t?`A copy of ${o}`:`Change ${o}`)}async function Gh({id:e,file:t,text:n}){let o=t?await Ce(Qe,t,e):ko(Qe,JSON.parse(n),e);dd(o,"form",String(o.now.name??"").trim()||"A mould of your own")}var ie=()=>a.mould,q=()=>ie().open.now;function xe(e,t){ii(ie(),e),Re(ie().open,P(q(),e,t))}var Yh=()=>js(ie()),Zh=()=>Hs(ie()),vk=["name","note","owned","unmould_after"];function cd(e){let t=q(),n=Object.keys({...e,...t}).filter(l=>e?.[l]!==t[l]);(!e||n.some(l=>!vk.includes(l)))&&v(ie(),{is_old:!0});let i=n.some(l=>ie().complaint?.field===`/${l}`),r=n.some(l=>!["name","note"].includes(l));(ie().is_old||i||r)&&pd()}function pd(){clearTimeout(Vh),Vh=window.setTimeout(()=>{kk()},yk)}async function kk(){if(ld)return void(ud=!0);let{mould:e}=a;if(!e)return;let t=e.open.now;if(!(!St(t,"shape")&&!St(t,"mesh"))){if(Zi(t).length)return v(e,{complaint:void 0});ld=!0;try{let n=Qe.written(t),o={file:e.open.file||"new.mould.json",mould:{...n,name:n.name||"New mould"}},i=await ui(o);e.open.now===t&&v(e,{answer:i,is_old:!1,complaint:void 0})}catch(n){if(!(n instanceof y))throw n;e.open.now===t&&md(n)}finally{ld=!1,ud&&pd(),ud=!1}}}function md(e){let{field:t,problem:n,remedy:o,keep:i,entry:r}=e.complaint,l=t?`${n}; ${o}`:e.message;v(ie(),{complaint:{field:Ds(q(),t),line:l,keep:i&&{...i,at:Ds(q(),i.at)},about:r===void 0?void 0:Ds(q(),`${t}/${r}`)}})}var Xh={};async function wr(e){let t=Xh={name:e},n=a.view;if(a.order?.open.file!==e){a.order&&Y(a.order.open)&&await Yt(a.order.open);let o=await Ce(wo,e);if(Xh!==t)return;let i=Y(o)?[o.saved??{}]:[];h({order:{open:o,past:i,future:[],times:""},typed:void 0}),Y(o)&&In(o)}a.view===n&&h({view:"order",typed:void 0}),aa()}function eg(){h({order:void 0,...a.view==="order"?{view:"orders"}:{}})}async function tg(e){let t={schema:"brimwright.order/1",id:crypto.randomUUID(),for:e,lines:[]},n=wo.new_name(ko(wo,t)),{file:o}=await gt({kind:wo,name:n,text:re(t)});await wr(o)}var Ie=()=>a.order,ng=()=>js(Ie()),og=()=>Hs(Ie());var da=e=>Object.values(a.formulas).includes(e),fi=e=>Object.values(a.beside).includes(e),ig=e=>`${String($(e,"/pour/formula"))}
${String($(e,"/pipe/formula"))}`;function xk(e,t){$(e,"/pour/mould")!==$(t,"/pour/mould")&&Ft(),ig(e)!==ig(t)&&zn(),ce(),In()}var Tk=ce;function Rk(e,t){for(let n of["pour","pipe"]){if(a.formulas[n]!==e)continue;let o=`/${n}/formula`,i=r=>String($(r,o)??"").endsWith(ot(t))?P(r,o,e.file):r;Bu(a.run,i),i(a.run.now)!==a.run.now&&Re(a.run,i(a.run.now))}}async function Sk(e){e===a.run?(Yo(),localStorage.removeItem("run"),h({view:"runs"})):e===a.mould?.open?en():e===a.order?.open?eg():fi(e)?qs(e):await Uh(e),await _t(),a.run.file&&ce()}function rg(){Dt("edited",({file:e,before:t})=>{e===a.run?xk(t,e.now):da(e)||fi(e)?Tk():e===a.mould?.open?cd(t):e===a.order?.open&&In(e)}),Dt("gave_way",({file:e})=>{if(e===a.mould?.open)return cd();e!==a.order?.open&&(e===a.run&&(Ft(),zn().then(ce)),ce())}),Dt("left_deleted",({file:e})=>{Sk(e)}),Dt("unwritten",({file:e})=>{e===a.run||e===a.order?.open?Yt(e):(da(e)||fi(e))&&ce()}),Dt("conflict",({file:e})=>{(da(e)||fi(e))&&h({is_old:!0})}),Dt("renamed",({file:e})=>{fi(e)&&a.held_open!==void 0&&h({held_open:e.file}),e===a.run&&(localStorage.setItem("run",e.file),Ft(),zn()),ce()}),Dt("copied",({file:e,from:t})=>{da(e)&&Rk(e,t),fi(e)&&eh(e,t),a.held_open===t&&h({held_open:e.file}),e===a.run&&(Cf(t),bh(t),localStorage.setItem("run",e.file),ri().then(ce))})}var st=s`<span aria-hidden="true">⚠</span> Danger`;function yr(e,t="",n){let o=Gn(e,n);return o.length?s`<div class="dangers" id=${t||u}>
    ${o.map(i=>s`<p class="danger"><strong>${st}</strong> ${i}</p>`)}
  </div>`:u}function Gn(e,t){let n=e==="pour"?"pipe":"pour";return a.dangers[e==="apart"?"apart":"run"].filter(o=>!o.is_of_heat).filter(o=>e==="apart"||o.batter!==n).filter(o=>t===void 0||o.batch_pieces===void 0||o.batch_pieces===t).map(o=>o.text)}function sg(){let e=ft(a.view)||a.view==="order"||tr()==="apart",t=a.dangers.run.map(({text:n})=>({from:e?`In the run "${String(a.run.now.name??a.run.file)}": `:"",text:n}));return[...a.dangers.apart.map(({text:n})=>({from:"",text:n})),...t]}var ag=()=>sg().length>0;function lg(){let e=sg(),t=Pk();return!e.length&&!t?u:s`<section class="foremost" aria-label="Danger, and figures from before">
    ${e.length?s`<div role="alert" class="dangers">
            ${e.map(({from:n,text:o})=>s`<p class="danger"><strong>${st}</strong> ${n}${o}</p>`)}
          </div>`:u}
    ${t?s`<div class="stale">
            <p role="status"><strong>Figures from before.</strong> ${t}</p>
            ${Ak()?s`<button type="button" @click=${Dk}>To the question</button>`:u}
          </div>`:u}
  </section>`}var Ak=()=>_n(tr())!==void 0&&!ft(a.view);function Dk(){let e=document.querySelector(".banner h2");e&&(e.tabIndex=-1,e.focus({preventScroll:!0}),e.scrollIntoView({block:"start"}))}function Pk(){if(!a.run.file||a.view==="reading")return"";let e=_n(tr());return e&&xo(e)?`${e.file} was deleted outside this page: what is struck through rests on no file. Save it again, or leave it deleted.`:e?`${e.file} was changed outside this page: what is struck through is of neither version. Choose which to keep.`:a.is_old&&a.changed_beside?`${a.changed_beside} was changed outside this page: what is struck through is not to be weighed.`:""}var yn={ATTRIBUTE:1,CHILD:2,PROPERTY:3,BOOLEAN_ATTRIBUTE:4,EVENT:5,ELEMENT:6},ca=e=>(...t)=>({_$litDirective$:e,values:t}),hi=class{constructor(t){}get _$AU(){return this._$AM._$AU}_$AT(t,n,o){this._$Ct=t,this._$AM=n,this._$Ci=o}_$AS(t,n){return this.update(t,n)}update(t,n){return this.render(...n)}};var{I:Ok}=Em,ug=e=>e;var cg=e=>e.strings===void 0,dg=()=>document.createComment(""),gi=(e,t,n)=>{let o=e._$AA.parentNode,i=t===void 0?e._$AB:t._$AA;if(n===void 0){let r=o.insertBefore(dg(),i),l=o.insertBefore(dg(),i);n=new Ok(r,l,e,e.options)}else{let r=n._$AB.nextSibling,l=n._$AM,d=l!==e;if(d){let c;n._$AQ?.(e),n._$AM=e,n._$AP!==void 0&&(c=e._$AU)!==l._$AU&&n._$AP(c)}if(r!==i||d){let c=n._$AA;for(;c!==r;){let p=ug(c).nextSibling;ug(o).insertBefore(c,i),c=p}}}return n},Yn=(e,t,n=e)=>(e._$AI(t,n),e),Mk={},pa=(e,t=Mk)=>e._$AH=t,pg=e=>e._$AH,ma=e=>{e._$AR(),e._$AA.remove()};var M=ca(class extends hi{constructor(e){if(super(e),e.type!==yn.PROPERTY&&e.type!==yn.ATTRIBUTE&&e.type!==yn.BOOLEAN_ATTRIBUTE)throw Error("The `live` directive is not allowed on child or event bindings");if(!cg(e))throw Error("`live` bindings can only contain a single expression")}render(e){return e}update(e,[t]){if(t===Be||t===u)return t;let n=e.element,o=e.name;if(e.type===yn.PROPERTY){if(t===n[o])return Be}else if(e.type===yn.BOOLEAN_ATTRIBUTE){if(!!t===n.hasAttribute(o))return Be}else if(e.type===yn.ATTRIBUTE&&n.getAttribute(o)===t+"")return Be;return pa(e),t}});var qe=e=>e.normalize("NFD").replace(/\p{M}/gu,"").toLowerCase();function vn(e,t){let n=qe(t).split(/\s+/).filter(Boolean),o=i=>n.every(r=>qe(i).includes(r));return o(`${e.name} ${e.id.replaceAll("_"," ")}`)?e.name:"own"in e?void 0:[...e.also_called,e.inci].find(o)}function fa(e,t){let n=qe(e).replaceAll(/[^a-z0-9]+/g,"_").replace(/^[_0-9]+|_+$/g,"")||"my_fat";for(let o=1;;++o){let i=o===1?n:`${n}_${o}`;if(!t.some(r=>r.id===i))return i}}var ga=28.349523125,gg=25.4,Bk=29.5735295625;function tn(e,t){return e.toFixed(t).replace(/^-(0(\.0*)?)$/,"$1")}function R(e,t){return Fk(tn(e,t))}var Fk=e=>e.replace(/(\.\d*?)0+$/,"$1").replace(/\.$/,"");function Ze(e){let t=[1,2,3].find(n=>Number(e.toFixed(n))!==0);return t!==void 0?`${tn(e,t)} %`:fd(e)?"just below 0 %":"0.0 %"}var fd=e=>e<0||Object.is(e,-0),_g=e=>Math.abs(e-Math.round(e))<1e-6;function mg(e){return e?[0,1,2,3].find(t=>_g(e*10**t))??3:0}function fg(e){return Math.max(0,Math.ceil(-Math.log10(e)-1e-9))}function Ck(e){return[0,1,2].find(t=>e.every(n=>_g(n*10**t)))??3}function _a(e,t,n){return e==="metric"?[t,""]:e==="us"?[n,""]:[t,n]}function he(e,t){let n=r=>e[`${t}${r}`],o=n("scale_step_g"),i=n("g");return{g:i,scale_step_g:o??10**-Ck([i]),g_text:n("g_text"),oz_text:n("oz_text"),reads:n("reads")}}var $g=.001;function ha(e,t,n,o,i=1e-9){let r=10**n;return tn(o==="nearest"?e/t:Math.floor((e+i)/t*r)/r,n)}var hg=[1,.5,.2,.1,.05,.02,.01,.005,.002,.001];function Lk(e){if(!hg.some(t=>Math.abs(t*10-e)<1e-9||Math.abs(t-e)<1e-9))return hg.find(t=>Math.abs(t*ga-e)<.6*$g)}function te(e,t,n="nearest"){let o=t.scale_step_g||.1,i=Lk(o),r=Math.min(.6*$g,o/2),l=i?ha(t.g,1,fg(o),n):ha(t.g,1,mg(o),n,r),d=i?ha(t.g,ga,mg(i),n,r):ha(t.g,ga,fg(o/ga),n),[c,p]=[`${t.g_text??l} g`,`${t.oz_text??d} oz`];return(t.reads?t.reads==="oz":i!==void 0)&&e==="both"?[p,c]:_a(e,c,p)}var j=(e,t,n=1,o="nearest")=>te(e,{g:t,scale_step_g:10**-n},o);function De(e,t,n=1){return _a(e,`${tn(t,n)} ml`,`${tn(t/Bk,2)} US fl oz`)}function Se(e,t){return _a(e,`${R(t,1)} mm`,Ik(t))}function Ik(e){let t=Math.round(Math.abs(e)/gg*32),n=e<0&&t?"-":"",o=t%32,i=32;for(;o&&o%2===0;)o/=2,i/=2;let r=Math.floor(t/32),l=o?`${o}/${i}`:"";return`${n}${[r||!o?String(r):"",l].filter(Boolean).join(" ")} in`}var hd=([e])=>e,O=([e,t])=>t?`${e} (${t})`:e;function bg(e,t){return _a(e,`${tn(t,0)} \xB0C`,`${tn(t*1.8+32,0)} \xB0F`)}function Ct(e){let t=/^\s*(?:(\d+)\s+)?(\d+(?:[.,]\d+)?)(?:\/(\d+))?\s*(mm|cm|m|in|inch|inches|")\s*$/.exec(String(e??""));if(!t)return;let n=Number(t[1]??0)+Number(t[2].replace(",","."))/Number(t[3]??1),o={mm:1,cm:10,m:1e3}[t[4]]??gg;return n*o}function $t(e){return/^[+-]?[\d.,/\s½¼¾]+?\s*([^\d\s.,/].*)$/.exec(String(e??""))?.[1]?.trim()??""}var Ue=e=>/^\s*[+-]?\d[\d.,/\s]*$/.test(e);function oe(e){let t=new Date(/^\d{4}-\d\d-\d\d$/.test(e)?`${e}T12:00`:e);return Number.isNaN(t.getTime())?e:t.toLocaleDateString("en-GB",{dateStyle:"medium"})}function Te(e){return`${new Date(`${e}T12:00`).toLocaleDateString("en-GB",{weekday:"short"})} ${oe(e)}`}var wg=e=>new Date(`${e}T12:00`).toLocaleDateString("en-GB",{day:"numeric",month:"short"}),bt=e=>e.replaceAll(/\d{4}-\d\d-\d\d/g,oe);function $a(e){let t=Math.ceil(e),[n,o]=[Math.floor(t/60),t%60];return[n?`${n} h`:"",o||!n?`${o} min`:""].filter(Boolean).join(" ")}function Zn(e){let t=Math.round(e/60);return e>=60&&e%60===0&&t<90?`${t} min`:e<90?`${Math.round(e)} s`:t<90?`${t} min`:`${Math.floor(t/60)} h ${t%60} min`}function kg(e){let t=Ct(e.round?.radius);if(t)return yg(t,S`<circle class="plain" r=${t} />`);let n=Wk(e);if(!n)return u;let o=Math.max(...n.map(([i,r])=>Math.hypot(i,r)));return o>0?yg(o,S`<path class="plain" d=${`M${n.map(i=>i.join(" ")).join("L")}Z`} />`):u}var yg=(e,t)=>s`<svg class="tip" viewBox="${-1.1*e} ${-1.1*e} ${2.2*e} ${2.2*e}" aria-hidden="true">
    ${t}
  </svg>`;function Wk({star:e,outline:t}){if(e&&typeof e=="object"&&!Array.isArray(e))return Ek(e);if(!Array.isArray(t))return;let n=t.map(o=>[vg(o,"x"),-vg(o,"y")]);return n.some(([o,i])=>Number.isNaN(o)||Number.isNaN(i))?void 0:n}function vg(e,t){let n=String(e[t]??"").trim();return(n.startsWith("-")?-1:1)*(Ct(n.replace(/^-/,""))??NaN)}function Ek({points:e,outer_radius:t,inner_radius:n}){let[o,i]=[Ct(t),Ct(n)];if(!(!o||!i||typeof e!="number"||e<3||e>60))return Array.from({length:2*e},(r,l)=>{let d=Math.PI*l/e,c=l%2?i:o;return[c*Math.sin(d),-c*Math.cos(d)]})}var gd=!1;function xg(e){let{plan:t,explanation:n}=a,o=n?.of!==t;return o&&!gd&&jk(),{workings:Nk(n?.workings,e),complaint:n?.complaint,is_old:o}}function Nk(e,t){let n=e?.get(t);return n?[n]:[...e?.values()??[]].filter(({of:o})=>o.startsWith(`${t}.`))}async function jk(){let{plan:e,planned:t}=a;if(!(!e||!t)){gd=!0;try{let{how:n}=await om(t);h({explanation:{of:e,workings:new Map(n.map(o=>[o.of,o]))}})}catch(n){if(!(n instanceof y))throw n;h({explanation:{of:e,workings:new Map,complaint:n.message}})}finally{gd=!1}}}var Tg=S`<path class="wall" d="M30 10l8 52h44l8-52" />`,_d={alkali:{name:"alkali",words:"Sodium hydroxide (NaOH) or potassium hydroxide (KOH), dry. Dissolved in water it is lye solution, which is another weight."},batch:{name:"batch",words:"What is mixed at once. A run that is too large for the pot is made in several."},batter:{name:"batter",words:"Fats and lye solution stirred together, until it sets."},cure:{name:"cure",words:"The weeks in which the soap dries and becomes milder. A cured piece weighs less than a fresh one."},embed:{name:"embed",words:"A piece of soap cast beforehand and buried in the base."},headspace:{name:"headspace",words:"The room left between the base and the brim. The topping may fill some of it.",drawing:S`<path class="shaded pour" d="M34 36l4 26h44l4-26z" />${Tg}<path class="pour-line" d="M20 36h80" />
      <path class="measure" d="M60 12v22m-4-4l4 4 4-4m-8-14l4-4 4 4" />`},kerf:{name:"kerf",words:"What the blade or wire turns to crumbs at each cut."},lye_solution:{name:"lye solution",words:"Alkali dissolved in water. Its weight is that of both together."},margin:{name:"margin",words:"What is left of the price after cost and fees, as a share of the price without tax."},markup:{name:"markup",words:"What is put on the cost, as a share of the cost. A markup of 100 % is a margin of 50 %."},overrun:{name:"overrun",words:"How much air whipping beats in: at 100 % the topping has twice the volume that it had before.",drawing:S`<path class="shaded pipe" d="M14 44h28v18h-28z" /><path class="shaded pipe" d="M72 26h28v36h-28z" />
      <path class="measure" d="M48 44h16m-5-5l5 5-5 5" /><path class="wall" d="M10 20v42h36v-42M68 20v42h36v-42" />`},purity:{name:"purity",words:"The share of the alkali that is alkali. The rest is mostly water that it drew from the air."},rejects:{name:"rejects",words:"Pieces that come out unfit to sell, as a share of all that are made."},scale_step:{name:"smallest step",words:"The least by which the scale's display can change, such as 1 g or 0.1 g."},superfat:{name:"superfat",words:"The share of the fats that is left without lye to turn it into soap, so that the soap is mild."},superfat_as_weighed:{name:"superfat as weighed",words:"The superfat that comes of the weights on this page, after rounding to what the scales show. Below 0 % there is lye left over, and the soap burns."},trace:{name:"trace",words:"The batter is thick enough that what drips from the whisk stays seen on it for a moment."},weigh_cup:{name:"weigh-cup",words:"A small cup of known volume, filled level with whipped topping and weighed without the cup. It shows how light the topping is today, and so how many pieces the bowl pipes.",drawing:S`<path class="shaded pipe" d="M30 10l8 52h44l8-52z" />${Tg}<path class="measure" d="M20 10h80" />`}};var $d=e=>`term ${e}`;function kn(e){return s`<button
    type="button"
    class="ask-term"
    aria-expanded=${a.open.has($d(e))?"true":"false"}
    aria-label="What ${_d[e].name} means"
    @click=${()=>He("open",$d(e))}
  >
    <span aria-hidden="true">?</span>
  </button>`}function Lt(e){if(!a.open.has($d(e)))return u;let{name:t,words:n,drawing:o}=_d[e];return s`<span class="term-words" role="note"
    >${o?s`<svg class="drawn" viewBox="0 0 120 72" aria-hidden="true">${o}</svg>`:u}<span
      ><b>${t}</b>: ${n}</span
    ></span
  >`}var Xn=e=>s`<span class="term">${kn(e)}${Lt(e)}</span>`;function F({key:e,label:t,shown:n,of:o,working:i,size:r="plain",note:l,term:d}){let c=a.open.has(e),p=`sum-${e.replaceAll(/[^\w]/g,"-")}`;return s`<div class="figure ${d?"explains":""}">
    <button
      type="button"
      class="line"
      aria-expanded=${c?"true":"false"}
      aria-controls=${c?p:u}
      @click=${()=>He("open",e)}
    >
      <span class="name">${t}${l?s`<small>${l}</small>`:u}</span>
      <span class="value ${r==="weigh"?"large":""} ${a.is_old?"old":""}"
        ><b>${n[0]}</b>${n[1]?s` <i>${n[1]}</i>`:u}</span
      ><span class="how" aria-hidden="true">${c?"\u2013":"="}</span>
    </button>
    ${d?s`${kn(d)}${Lt(d)}`:u}
    ${c?s`<div class="sum" id=${p}>${i?ba(i):bd(o)}</div>`:u}
  </div>`}var Oo=(e,t,n)=>F({key:e,label:t,shown:["",""],of:n});function bd(e){let{workings:t,complaint:n,is_old:o}=xg(e);return t.length?s`<div class=${o?"old":""}>${t.map(ba)}</div>`:o?s`<p class="old" role="status">Asking how it is calculated ...</p>`:s`<p role="status">${n??"The program does not say how this is calculated."}</p>`}function ba({formula:e,with:t,sum:n,rounded:o,comes_to:i,sources:r}){let l=n&&i?`${n} = ${i}`:n??(i&&`It comes to ${i}`);return s`<p class="formula">${e}</p>
    <table>
      <caption>
        With
      </caption>
      <tbody>
        ${t.map(({name:d,value:c,from:p})=>s`<tr>
              <th scope="row">${d}</th>
              <td>${c}</td>
              <td>${p??""}</td>
            </tr>`)}
      </tbody>
    </table>
    ${l?s`<p class="comes-to">${l}${o?`, rounded ${o}`:""}</p>`:u}
    ${r.length?s`<p class="sources">From: ${r.join("; ")}.</p>`:u}`}var Mo,vr=[],xn=()=>Mo!==void 0;function at(e,t,n,o){if(!Mo||Mo.some(r=>r.id===n))return;let i=vr.flatMap(({part:r})=>r??[]);Mo.push({of:e,at:t,id:n,label:o,part:i.at(-1)??"",folds:vr.flatMap(({fold:r})=>r??[])})}function wt(e,t){vr.push(e);try{return t()}finally{vr.pop()}}var Rg=()=>{},Sg=e=>{Rg=e},wa,Hk=()=>[a.run.now,...Object.values(a.formulas).map(e=>e.now),...Object.values(a.beside).map(e=>e.now),a.formulas.apart,a.plan,a.fats,a.files];function _i(){if(xn())return[];let e=Hk();return wa?.of.length===e.length&&e.every((n,o)=>n===wa.of[o])||(wa={of:e,wanted:qk()}),wa.wanted}function qk(){Mo=[],vr=[];try{return Rg(),Mo}finally{Mo=void 0}}function Ag(e){a.touched.has(e)||h({touched:new Set(a.touched).add(e)})}function Dg(e,t){if(a.has_asked)return!1;let n=_i().filter(o=>o.of===e&&(o.at===t||o.at.startsWith(`${t}/`)));return n.length>0&&n.every(o=>!a.touched.has(o.id))}var J=(e,t)=>`f-${e}${t.replaceAll(/[^\w]/g,"-")}`;function ya(e){if(e==="order")return a.order?.quoted?.complaint??a.order?.days?.complaint;let t=(n,o)=>o===a.plan?n?.complaint:void 0;return a.complaint??t(a.quoted,a.quoted?.of)??t(a.run_days,a.run_days?.of[0])}function We(e,t){let n=ya(e);if(!(!n||n.field!==t&&!n.field.startsWith(`${t}/`)))return yt(e)&&!Dg(e,n.field)?H(n):void 0}function ve(e,t){return ya(e)?.field===t?We(e,t):void 0}function yt(e){let t=ya(e),n=Hn(e)?.file;return!t||n===void 0?!1:t.file===""||t.file===n||t.file.endsWith(`/${n}`)}function Uk(e,t){let n=t.slice(0,t.lastIndexOf("/"));return Object.keys(g(e,n)??{}).length>1?t:n}function nn(){let e=ya();if(e)for(let t of["run",...me,...ye])for(let n=e.field;n;n=n.slice(0,n.lastIndexOf("/"))){let o=We(t,n)&&document.getElementById(J(t,n));if(o)return o}}function zk(e,t){let n=e.of??"run";if(e.optional&&t.trim()==="")return;if(e.number)return/^\s*\d+([.,]\d+)?\s*$/.test(t)?Number(t.trim().replace(",",".")):t;if(e.count)return/^\s*\d{1,9}\s*$/.test(t)?Number(t):t;let o=Jk(e,n);return o&&Ue(t)?`${t.trim()} ${o}`:t}function Jk(e,t){return $t(g(t,e.at))||e.unit||""}var ge=(e,t,n)=>t||n?s`<p id="${e}-said" class=${t?"complaint":"hint"}>${t??n}</p>`:u,wd=!1;addEventListener("pointerdown",()=>wd=!0,!0);for(let e of["pointerup","pointercancel"])addEventListener(e,()=>wd=!1,!0);var Kk=()=>h({typed:void 0});function Bo(e){let{id:t}=e.target,n=()=>{Kk(),Ag(t)};wd?addEventListener("pointerup",()=>setTimeout(n),{once:!0}):n()}var Vk=e=>typeof e=="string"&&e.startsWith("?")?e.slice(1).trim():void 0,Qk=({unit:e="",told:t=""},n)=>[e.replace("cm2","cm\xB2"),t,n?"required":""].filter(Boolean).join(", ")||u;function f(e){let t=e.of??"run",n=J(t,e.at),o=g(t,e.at),i=Vk(o),r=a.typed?.key===n,l=r?a.typed.text:o===void 0||i!==void 0?"":String(o),d=i!==void 0||l.trim()===""&&(!e.optional||e.is_due===!0);d&&at(t,e.at,n,e.label);let c=We(t,e.at),p=b=>{let w=b.target.value;h({typed:{key:n,text:w}});let x=zk(e,w);Z(t,x===void 0&&e.takes_part?Uk(t,e.at):e.at,x)},_=(r&&typeof o=="string"&&o!==l?`taken as ${o}`:"")||e.hint||i;return s`<div
    class="field ${e.wide?"wide":""} ${e.short?"short":""} ${c?"wants":""}"
  >
    ${yd(s`<label for=${n} data-said=${Qk(e,d)}>${e.label}</label>`,e.term)}
    <input
      id=${n}
      type=${e.date?"date":"text"}
      aria-required=${e.optional&&!e.is_due?u:"true"}
      .value=${M(l)}
      @input=${p}
      @blur=${Bo}
      autocomplete="off"
      spellcheck="false"
      inputmode=${e.date?u:e.count?"numeric":e.number?"decimal":"text"}
      aria-invalid=${c?"true":"false"}
      aria-describedby=${[c||_?`${n}-said`:"",e.described_by??""].filter(Boolean).join(" ")||u}
    />
    ${ge(n,c,_)} ${e.term?Lt(e.term):u}
  </div>`}var yd=(e,t)=>t?s`<div class="labelled">${e}${kn(t)}</div>`:e;function ze(e){for(let t=e?.closest("details");t;t=t.parentElement?.closest("details"))t.open=!0;e?.focus()}var L=e=>()=>document.getElementById(e),ne=(e,t)=>L(J(e,t)),It=e=>()=>document.querySelector(`#${e} :is(input, select, button[aria-pressed])`),Gk=()=>document.activeElement;function z(e){requestAnimationFrame(()=>ze(e()))}function lt(e,t,n,o=Gk){B(t),Yf(e,n),z(o)}function E(e,t,n,o,i){lt(e,t,r=>P(r,n,o),i)}var vt=(e,t,n)=>`${J(e,t)}-${n}`;function I(e,t){let n=ve(e,t);return n?s`<p id=${J(e,t)} class="complaint" tabindex="-1">${n}</p>`:u}var Pg=(e,t,n)=>t.map(([o,i])=>s`<button type="button" aria-pressed=${o===e?"true":"false"} @click=${()=>n(o)}>
        ${i}
      </button>`);function ue(e,t,n,o){return s`<div class="choice" role="group" aria-label=${e}>${Pg(t,n,o)}</div>`}function T({of:e="run",question:t,at:n,asked_at:o=n,is_told_elsewhere:i,chosen:r,answers:l,puts:d,then:c,hint:p,optional:m,term:_}){let b=i?vt(e,n,t.replaceAll(/\W+/g,"-")):J(e,o),w=r===void 0&&!m;w&&at(e,o,b,t);let x=i?void 0:ve(e,o),K=Oe=>{if(Oe===r)return;let mo=l.find(([Hy])=>Hy===Oe)[1];E(e,`${t}: ${mo}`,n,d(Oe),c&&ne(e,c(Oe)))};return s`<div class="field asked ${x?"wants":""}">
    ${yd(s`<p class="question" id="${b}-label" data-said=${w?"required":u}>${t}</p>`,_)}
    <div
      class="choice"
      role="group"
      id=${b}
      tabindex="-1"
      aria-labelledby="${b}-label"
      aria-describedby=${x||p?`${b}-said`:u}
    >
      ${Pg(r,l,K)}
    </div>
    ${ge(b,x,p)} ${_?Lt(_):u}
  </div>`}function vd(e,t,n,o){let i=J("run",e),r=ve("run",e),l=()=>E("run",`${t}: ${n?"no":"yes"}`,e,n?void 0:o);return s`<div class="choice">
      <button
        type="button"
        id=${i}
        aria-pressed=${n?"true":"false"}
        aria-describedby=${r?`${i}-said`:u}
        @click=${l}
      >
        ${t}
      </button>
    </div>
    ${ge(i,r)}`}function $e({label:e,of:t="run",at:n,answers:o,unsaid:i,optional:r,chosen:l,take:d}){let c=J(t,n),p=We(t,n),m=l??A(t,n);!m&&!r&&at(t,n,c,e);let _=!m||o.some(([x])=>x===m),b=[["",i],..._?[]:[[m,m]],...o];return s`<div class="field choose ${p?"wants":""}">
    <label for=${c} data-said=${m||r?u:"required"}>${e}</label>
    <select
      id=${c}
      aria-required=${r?u:"true"}
      @change=${x=>{let K=x.target.value;d?d(K):Z(t,n,K||!r?K:void 0)}}
      aria-invalid=${p?"true":"false"}
      aria-describedby=${p?`${c}-said`:u}
    >
      ${b.filter(([x])=>x||r||!m).map(([x,K])=>s`<option value=${x} .selected=${M(x===m)}>${K}</option>`)}</select
    >${ge(c,p)}
  </div>`}function $i(e,t,n=[]){let o=Ge(A("run",t),n);return $e({label:e,at:t,chosen:o,answers:n.map(i=>[i.file,i.name||i.file]),unsaid:"choose ..."})}function Je({of:e="run",at:t,name:n,title:o,add:i,blank:r,body:l}){let d=vt(e,t,"part"),c=vt(e,t,"add"),p=()=>wt({part:o},l);return g(e,t)===void 0?s`<p class="choice">
      <button type="button" id=${c} @click=${()=>E(e,`${o} added`,t,r,It(d))}>
        ${i}
      </button>
    </p>`:s`<div class="part" id=${d} role="group" aria-label=${o}>
    <div class="part-head">
      <p class="part-title">${o}</p>
      <button
        type="button"
        aria-label="Remove ${n}"
        @click=${()=>E(e,`${o} removed`,t,void 0,L(c))}
      >
        Remove
      </button>
    </div>
    ${I(e,t)} ${p()}
  </div>`}var Og=(e,t)=>`folded ${e} ${t}`,Ee=(e,t)=>le(Og(e,t));function D({of:e="run",name:t,pointers:n,summary:o,is_needed:i,body:r}){let l=Og(e,t);if(xn())return s`${wt({fold:l},r)}`;(i||n.some(p=>We(e,p)))&&le(l);let d=a.open.has(l);return s`<details .open=${d}>
    <summary @click=${p=>{p.preventDefault(),He("open",l)}}>${o}</summary>
    ${d?s`<div class="folded">${r()}</div>`:u}
  </details>`}var k=({of:e="run",at:t})=>X(e,t),C=({of:e="run",at:t},n)=>vt(e,`${t}/${n}`,"item"),va=({of:e="run",at:t},n,o)=>vt(e,`${t}/${n}`,o),Yk=({of:e="run",at:t})=>J(e,t);function kr(e,t,n,o){let{of:i="run",at:r,stays:l,and:d=c=>c}=e;lt(i,t,c=>d(P(c,r,n.length||l?n:void 0),n.length),o)}function N(e,t,n){let o=k(e);kr(e,`${n} added`,[...o,t],It(C(e,o.length)))}function Zk(e,t,n){let o=k(e).filter((l,d)=>d!==t),i=Math.min(t,o.length-1),r=o.length>(e.least??0);kr(e,`${n} removed`,o,r?L(va(e,i,"drop")):ne(e.of??"run",e.at))}function Xk(e,t,n,o){let i=[...k(e)],[r]=i.splice(t,1);i.splice(t+n,0,r);let l=n<0?"earlier":"later",c=t+n===0||t+n===i.length-1?n<0?"later":"earlier":l;kr(e,`${o} moved ${l}`,i,L(va(e,t+n,c)))}function U(e,t,n){let o=k(e).length-1,i=o>=(e.least??0),r=e.in_order&&o>0;if(!i&&!r)return u;let l=(d,c,p)=>s`<button
      type="button"
      id=${va(e,t,c)}
      ?disabled=${p}
      aria-label="${n} ${c}"
      @click=${()=>Xk(e,t,d,n)}
    >
      ${d<0?"\u2191":"\u2193"}
    </button>`;return s`<div class="tools">
    ${r?s`${l(-1,"earlier",t===0)} ${l(1,"later",t===o)}`:u}
    ${i?s`<button
            type="button"
            id=${va(e,t,"drop")}
            aria-label="Remove ${n}"
            @click=${()=>Zk(e,t,n)}
          >
            ×
          </button>`:u}
  </div>`}function G(e,t,n){let o=Yk(e),i=ve(e.of??"run",e.at);return s`${ge(o,i)}
    <button type="button" id=${o} aria-describedby=${i?`${o}-said`:u} @click=${n}>
      ${t}
    </button>`}var se=()=>a.beside.studio!==void 0,xr=({run:e})=>g("run",e),kd=({studio:e})=>g("studio",e);function Tr(e){return xr(e)===void 0&&se()?{of:"studio",at:e.studio}:{of:"run",at:e.run}}var on=e=>xr(e)??kd(e),Pe=(e,t)=>f({...t,...Tr(e)}),xd=e=>e===void 0||e===""||e!==null&&typeof e=="object"&&!Object.keys(e).length;function Rr(e,t=""){return e===void 0||xd(e)?[]:e===null||typeof e!="object"||Array.isArray(e)?[[t,e]]:Object.entries(e).flatMap(([n,o])=>Rr(o,`${t}/${W(n)}`))}function Tn(e,t){for(let n=t;n;n=n.slice(0,n.lastIndexOf("/")))$(e,n)!==void 0&&xd($(e,n))&&(e=P(e,n,void 0));return e}var bi=(e,t)=>t.reduce((n,o)=>Tn(P(n,o,void 0),o),e);function Bg(e){let t=new Map;return e.flatMap(n=>Rr(xr(n)).flatMap(([o,i])=>{let r=n.studio+o,l=t.get(r)??g("studio",r);return xd(l)||String(l).startsWith("?")||l===i?(t.set(r,i),[[n.run+o,r,i]]):[]}))}async function Td(e){se()||await Us();let t=Bg(e);Bt([["studio",n=>t.reduce((o,[,i,r])=>P(o,i,r),n)],["run",n=>bi(n,t.map(([o])=>o))]]),B("Kept in the studio")}function ex(e){let t=e.flatMap(o=>Rr(kd(o)).map(([i,r])=>[o.run+i,r]));Bt([["run",o=>t.reduce((i,[r,l])=>$(i,r)===void 0?P(i,r,l):i,o)]]),B("Said in this run only")}function tx(e){let t=e.flatMap(n=>Rr(xr(n)).filter(([o])=>g("studio",n.studio+o)!==void 0).map(([o])=>n.run+o));Bt([["run",n=>bi(n,t)]]),B("Taken from the studio again")}var Mg=e=>Rr(e).length>0;function eo(e,t){if(!se())return u;let n=t.some(r=>Mg(xr(r))),o=t.some(r=>Mg(kd(r))),i=(r,l)=>s`<button type="button" aria-label="${e}: ${r}" @click=${l}>${r}</button>`;return s`<span class="who-says">
    <small>${n?"in this run only":o?"from the studio":"kept in the studio"}</small>
    ${n&&Bg(t).length?i("Keep in my studio",()=>{Td(t)}):u}
    ${n&&o?i("As in the studio",()=>tx(t)):u}
    ${!n&&o?i("Otherwise in this run",()=>ex(t)):u}
  </span>`}function Rd(e){let t=Object.keys(g("studio","/moulds_owned")??{}),n=a.files?.moulds;return t.find(o=>Ge(o,n)===Ge(e,n))??e}var pe=(e,t)=>Object.keys(g(e,t)??{}),Fg=(e,t)=>`${J(e,t)}-name`;function wi({of:e,at:t,label:n,add:o,blank:i,then:r}){let l=Fg(e,t),d=()=>{let c=document.getElementById(l),p=c.value.trim();if(!p)return c.focus();if(c.value="",pe(e,t).includes(p))return ze(r(p)());E(e,`${p} added`,`${t}/${W(p)}`,i,r(p))};return s`<div class="row">
    <div class="field">
      <label for=${l}>${n}</label>
      <input
        id=${l}
        autocomplete="off"
        spellcheck="false"
        @keydown=${c=>{c.key==="Enter"&&d()}}
      />
    </div>
    <button type="button" @click=${d}>${o}</button>
  </div>`}function Sr({of:e,at:t,name:n,label:o,also:i=l=>l,put:r}){let l=`${J(e,t)}-${pe(e,t).indexOf(n)}-called`;return Ad({id:l,name:n,label:o,taken:pe(e,t),take:d=>{let c=p=>i(Ar(p,t,n,d),d);r?r(c,d):lt(e,`${n} is called ${d}`,c)}})}var Sd;function Ad({id:e,name:t,label:n,taken:o,take:i,hint:r}){let l=c=>{let p=c.target.value.trim(),m=p!==t&&o.includes(p);Sd=m?{id:e,words:`Another is called ${p} already`}:void 0,h({typed:void 0}),!(!p||m||p===t)&&(i(p),B(`${t} is called ${p}`),z(L(e)))},d=Sd?.id===e?Sd.words:void 0;return s`<div class="field ${d?"wants":""}">
    <label for=${e}>${n}</label>
    <input
      id=${e}
      .value=${M(a.typed?.key===e?a.typed.text:t)}
      @input=${c=>h({typed:{key:e,text:c.target.value}})}
      @change=${l}
      autocomplete="off"
      spellcheck="false"
      aria-invalid=${d?"true":"false"}
      aria-describedby=${d||r?`${e}-said`:u}
    />
    ${ge(e,d,r)}
  </div>`}function Ar(e,t,n,o){let i=Object.entries($(e,t)??{}).map(([r,l])=>[r===n?o:r,l]);return P(e,t,Object.fromEntries(i))}function Fo(e,t,n,o=n){let i=r=>Tn(P(r,`${t}/${W(n)}`,void 0),t);return s`<div class="tools">
    <button
      type="button"
      aria-label="Remove ${o}"
      @click=${()=>lt(e,`${o} removed`,i,L(Fg(e,t)))}
    >
      ×
    </button>
  </div>`}var Co="/pipe/beads",Et=`${Co}/tip`,nx={of:"run",at:Et},rn={at:`${Co}/moves`,in_order:!0},Dd="\0own",Wg={tip:"",bead_to_opening:"",moves:[]},Wt=(e,t)=>({name:e,label:t,kind:"length"}),Cg={name:"count",label:"How many",kind:"count"},Lg=Wt("circle_radius","Radius of their circle"),Pd={dollop:{words:"Dollop",does:"A heap in the middle.",measures:[Wt("diameter","Diameter"),Wt("height","Height")]},ring:{words:"Ring",does:"One closed turn.",measures:[Wt("radius","Radius, to the bead's middle")]},spiral:{words:"Spiral",does:"Turns that climb, wider or narrower.",measures:[{name:"turns",label:"Turns",kind:"number"},Wt("start_radius","Radius at the start"),Wt("end_radius","Radius at the end"),Wt("rise","Rise")]},tail:{words:"Tail",does:"Drawn straight up to a point.",measures:[Wt("length","Length")]},dots:{words:"Dots",does:"Upright dabs on a circle.",measures:[Cg,Lg,Wt("height","Height")]},shells:{words:"Shells",does:"Strokes lying outward from a circle.",measures:[Cg,Lg,Wt("length","Length")]},bead:{words:"Straight bead",does:"Along the mould.",measures:[Wt("length","Length"),{name:"aside",label:"Distance from the middle",kind:"signed",optional:!0}]}};function Eg(e){return s`${ix()} ${Od()?xa(nx):ux()}
    ${f({label:"Bead \xF7 tip opening",at:`${Co}/bead_to_opening`,number:!0,hint:"Section of the bead \xF7 opening of the tip: 1 if they are the same."})}
    <h4>What the tip does, in order</h4>
    <div class="items">${k(rn).map((t,n)=>gx(t,n,e))}</div>
    ${bx()}`}var Od=()=>typeof g("run",Et)=="object",Md=()=>String(g("run",`${Co}/own_tips`)??g("studio","/own_tips")??"");function ox(){let e=Md(),t=e?id(e):[];return g("run",`${Co}/own_tips`)===void 0?[...t,..._r()]:t}function ix(){let e=n=>n===Dd?E("run","a tip of your own",Et,{name:"",round:{radius:""}},sx):Z("run",Et,n),t=ox().map(n=>[n.name,n.opening?`${n.name} (${n.opening})`:n.name]);return s`${$e({label:"Tip",at:Et,answers:[...t,[Dd,"My own, measured"]],unsaid:"Which tip?",take:e,chosen:Od()?Dd:void 0})}
  ${Od()?u:D({name:"tips",pointers:[`${Co}/own_tips`],summary:"Tips of a file of your own",body:()=>f({label:"File of tips",at:`${Co}/own_tips`,optional:!0,hint:"Beside your run, such as studio.tips.json. Emptied, the built-in tips are offered."})})}`}var rx=vt("run",Et,"own"),sx=It(rx);async function ax(){let e=g("run",Et);if(!await Iu())return;let t=X("own_tips","/tips"),n=lx(String(e.name).trim()||"My tip",t);Bt([["own_tips",o=>P(o,`/tips/${t.length}`,{...e,name:n})],["run",o=>P(o,Et,n)]]),B(`${n} kept in ${a.beside.own_tips.file}`)}function lx(e,t){for(let n=1;;++n){let o=n===1?e:`${e} ${n}`;if(![...t,..._r()].some(i=>i.name===o))return o}}function ux(){let e=A("run",Et),t=Md();if(!e||!t||!id(t).some(o=>o.name===e))return u;let n=X("own_tips","/tips").findIndex(o=>o.name===e);return n<0?s`<button type="button" @click=${()=>{Iu()}}>Change this tip of my own</button>`:xa({of:"own_tips",at:`/tips/${n}`})}var Ig=[["round","Round"],["star","Star"],["outline","Another outline"]],ka={x:"",y:""},dx={round:{radius:""},star:{points:"",outer_radius:"",inner_radius:""},outline:[ka,ka,ka]};function xa({of:e,at:t}){let n=Ig.map(([r])=>r),o=n.find(r=>g(e,`${t}/${r}`)!==void 0),i=r=>({...fe(e,t,n),[r]:dx[r]});return s`<div class="part" id=${vt(e,t,"own")} role="group" aria-label="My own tip">
    ${I(e,t)} ${cx({of:e,at:t})}
    ${T({of:e,question:"Opening of the tip",at:t,is_told_elsewhere:!0,chosen:o,answers:Ig,puts:i})}
    ${o?fx({of:e,at:t},o):u}
    ${D({of:e,name:e==="run"?"hand":`hand ${t}`,pointers:[`${t}/hand`,`${t}/note`],summary:"Correction for your hand",body:()=>mx({of:e,at:t})})}
    ${e==="run"?s`<button type="button" @click=${()=>{ax()}}>Keep this tip for all my runs</button>`:s`<p class="hint">It stands in ${a.beside.own_tips.file}, for every run that names this file.</p>`}
  </div>`}var cx=({of:e,at:t})=>e==="run"?f({label:"What you call the tip",at:`${t}/name`}):Ad({id:J(e,`${t}/name`),name:A(e,`${t}/name`),label:"What you call the tip",taken:X("own_tips","/tips").map(({name:n})=>String(n)),take:n=>px(t,n),hint:"The run that lies open and the studio follow; other runs that name it choose it anew."});function px(e,t){let n=A("own_tips",`${e}/name`),o="/hand",i=Ot(Md())===a.beside.own_tips?.file,r=i&&g("run",Et)===n,l=i&&g("studio",`${o}/${W(n)}`)!==void 0;Bt([["own_tips",d=>P(d,`${e}/name`,t)],...r?[["run",d=>P(d,Et,t)]]:[],...l?[["studio",d=>Ar(d,o,n,t)]]:[]])}function mx({of:e,at:t}){let n=`${t}/hand`,o=i=>g(e,i)!==void 0;return s`<div class="row">
      ${f({of:e,label:"Correction for your hand",at:`${n}/correction`,number:!0,short:!0,optional:!0,takes_part:!0,hint:"What your toppings weigh \xF7 what the moves come to."})}
      ${o(`${n}/correction`)?f({of:e,label:"From so many trials",at:`${n}/trials`,count:!0,optional:!0,short:!0}):u}
    </div>
    ${o(n)?s`<button
            type="button"
            @click=${()=>E(e,"correction removed",n,void 0,It(vt(e,t,"own")))}
          >
            Leave the correction out
          </button>`:u}
    ${f({of:e,label:"Note on the tip",at:`${t}/note`,optional:!0})}`}function fx(e,t){if(t==="outline")return hx(e);let{of:n,at:o}=e,i=(r,l)=>f({of:n,label:l,at:`${o}/${t}/${r}`,unit:"mm",short:!0});return s`<div class="row">
    ${t==="round"?i("radius","Radius of the opening"):s`${f({of:n,label:"Points",at:`${o}/star/points`,count:!0,short:!0})}
          ${i("outer_radius","Radius to the points")} ${i("inner_radius","Radius to the notches")}`}
  </div>`}function hx({of:e,at:t}){let n={of:e,at:`${t}/outline`};return s`<p class="hint">
      Its corners in order, seen from the front, as far right (x) and up (y) as they lie; −8 mm is to the left.
    </p>
    ${k(n).map((o,i)=>s`<div class="row" id=${C(n,i)}>
          ${f({of:e,label:`Corner ${i+1}, x`,at:`${n.at}/${i}/x`,unit:"mm",short:!0})}
          ${f({of:e,label:`Corner ${i+1}, y`,at:`${n.at}/${i}/y`,unit:"mm",short:!0})}
          ${U(n,i,`corner ${i+1}`)}
        </div>`)}
    ${G(n,"One more corner",()=>N(n,ka,"corner"))}`}function gx(e,t,n){let o=Pd[String(e.move)],i=`${rn.at}/${t}`,r=`${t+1}. ${o?.words??String(e.move)}`;return s`<div class="part" id=${C(rn,t)} role="group" aria-label=${r}>
    <div class="part-head">
      <p class="part-title">${r}</p>
      ${U(rn,t,r)}
    </div>
    ${I("run",i)}
    <div class="row">
      ${(o?.measures??[]).map(l=>_x(i,l))}
      ${f({label:"Starts at height",at:`${i}/at_height`,unit:"mm",optional:!0,short:!0})}
    </div>
    ${$x(t,n)}
  </div>`}function _x(e,{name:t,label:n,kind:o,optional:i}){let r=o==="signed"?"\u221212 mm is to the other side.":void 0,l=o==="length"||o==="signed"?"mm":void 0;return f({label:n,at:`${e}/${t}`,unit:l,hint:r,optional:i,short:!0,count:o==="count",number:o==="number"})}function $x(e,t){let n=t?.visible_by?.moves??[],o=n[e];if(!o||n.length!==k(rn).length)return u;let i=o.length_mm>0?`${R(o.length_mm/10,1)} cm of bead`:"";return F({key:`pipe.move.${e}`,label:"Lays down",note:i,shown:De(a.units,o.volume_ml),of:`pipe.visible_by.moves.${e}.volume_ml`})}function bx(){let e=o=>({move:o,...Object.fromEntries(Pd[o].measures.filter(i=>!i.optional).map(i=>[i.name,""]))}),t=J("run",rn.at),n=ve("run",rn.at);return k(rn).length||at("run",rn.at,t,"What the tip does"),s`${ge(t,n)}
    <div
      class="choice words"
      role="group"
      id=${t}
      tabindex="-1"
      aria-label="Add a move"
      aria-describedby=${n?`${t}-said`:u}
    >
      ${Object.entries(Pd).map(([o,{words:i,does:r}])=>s`<button type="button" @click=${()=>N(rn,e(o),i)}>
            <b>+ ${i}</b> <small>${r}</small>
          </button>`)}
    </div>
    <p class="hint">
      Without a height a move starts on the paper; a spiral or a tail goes on where the move before it ended.
    </p>`}function sn(e,t=()=>{}){if(!e.theirs)return u;let n=xo(e),o=`conflict-${e.file.replaceAll(/[^\w]/g,"-")}`,i=()=>{_f(e),t()};return s`<section class="banner" aria-labelledby=${o}>
    <h2 id=${o}>${e.file} was ${n?"deleted":"changed outside this page"}</h2>
    <p>
      ${n?"Another program or browser tab deleted it. What stands on this page can be saved again, or be forgotten with it.":"Another program or browser tab saved it. Which version do you want to keep?"}
    </p>
    ${e.failed?s`<p class="complaint" role="status">Not loaded: ${e.failed}.</p>`:u}
    <div class="choice">
      ${n?s`<button type="button" @click=${i}>Save it again</button>
              <button type="button" @click=${()=>$f(e)}>Leave it deleted</button>`:s`<button type="button" @click=${()=>gf(e)}>Load the saved file</button>
              <button type="button" @click=${i}>Overwrite it with this page</button>`}
    </div>
  </section>`}function an(e){if(e.theirs||!e.set_aside||oi(e)&&!e.is_taken)return u;let t=()=>{oi(e)&&Ao(),bf(e)};return s`<section class="banner quiet" aria-label="${e.file} was changed">
    <p>
      ${e.file} was changed outside this page, and stands here as it is
      now.${e.is_taken?"":" What you typed is still here."}
    </p>
    <div class="choice">
      <button type="button" @click=${t}>Change to the other text</button>
      ${e.is_taken?s`<button type="button" @click=${()=>ff(e)}>Close</button>`:u}
    </div>
  </section>`}var Ta={kind:"",inci:"",inci_sodium_soap:"",saponification_value:{low:"",high:""},source:""};function jg(e,t){let n=hr(e);if(!Array.isArray(n)||!n.some(d=>d.id===t))return u;let i=X("own_fats","/fats").findIndex(d=>d.id===t);if(!(i>=0&&a.beside.own_fats!==void 0))return s`<button type="button" @click=${()=>{wx(e,t)}}>Change this fat of my own</button>`;let l=`/fats/${i}`;return D({of:"own_fats",name:t,pointers:[l],summary:`My own fat, in ${a.beside.own_fats.file}`,body:()=>wt({part:A("own_fats",`${l}/name`)||"Your own fat"},()=>Bd(l))})}async function wx(e,t){await zs(e),Ee("own_fats",t);let n=X("own_fats","/fats").findIndex(o=>o.id===t);z(L(`f-own_fats-fats-${n}-name`))}var yx=[["triglyceride","Oil, fat or butter"],["wax_ester","Wax"],["free_fatty_acid","Fatty acid"]];function Bd(e){let t=(n,o,i,r=!1)=>f({of:"own_fats",label:o,at:`${e}/${n}`,hint:i,optional:r});return s`${I("own_fats",e)}
    <p class="hint">All of it stands in the supplier's document. Every formula that names this file knows the fat.</p>
    <div class="row">
      ${t("name","Name of the fat")} ${t("source","The document","Supplier, name, date.")}
      ${t("lot","Lot",void 0,!0)}
    </div>
    ${T({of:"own_fats",question:"What it is",at:`${e}/kind`,chosen:A("own_fats",`${e}/kind`)||void 0,answers:yx,puts:n=>n,hint:"Jojoba is a wax; beeswax and lanolin are waxes too."})}
    ${vx(`${e}/saponification_value`)}
    <div class="row">
      ${t("inci","INCI name")}
      ${t("inci_sodium_soap","INCI name of its sodium soap","Such as Sodium Olivate.")}
      ${t("inci_potassium_soap","INCI name of its potassium soap","Left out, it is formed from the other.",!0)}
    </div>
    ${D({of:"own_fats",name:`${e} more`,pointers:["iodine_value","density","melting_range","unsaponifiable","fatty_acids","note"].map(n=>`${e}/${n}`),summary:"Iodine value, density, fatty acids",body:()=>kx(e)})}`}function vx(e){let t=g("own_fats",e),n=t!==null&&typeof t=="object"?"range":"one",o=(i,r,l=!1)=>f({of:"own_fats",label:r,at:i,number:!0,short:!0,optional:l,unit:"mg KOH/g"});return s`${T({of:"own_fats",question:"Saponification value, mg of KOH for 1 g of fat (ISO 3657), never of NaOH",at:e,is_told_elsewhere:!0,chosen:n,answers:[["range","Lowest and highest"],["one","One value"]],puts:i=>i==="one"?"":{low:"",high:""}})}
    <div class="row">
      ${n==="one"?o(e,"Saponification value"):s`${o(`${e}/low`,"Lowest")} ${o(`${e}/typical`,"Typical",!0)}
            ${o(`${e}/high`,"Highest")}`}
    </div>`}function kx(e){let t=(o,i,r,l)=>{let d=`${e}/${o}`,c=g("own_fats",d)!==void 0,p=()=>E("own_fats",`${i}: ${c?"left out":"added"}`,d,c?void 0:r);return s`<div class="part" role="group" aria-label=${i}>
      <div class="part-head">
        <p class="part-title">${i}</p>
        <button type="button" aria-label="${c?"Leave out":"Add"} ${i.toLowerCase()}" @click=${p}>
          ${c?"Leave out":"Add"}
        </button>
      </div>
      ${c?s`${I("own_fats",d)}${l()}`:u}
    </div>`},n=(o,i,r,l=!1)=>f({of:"own_fats",label:i,at:`${e}/${o}`,unit:r,number:l,short:!0});return s`<div class="items">
      ${t("iodine_value","Iodine value",{low:"",high:""},()=>typeof g("own_fats",`${e}/iodine_value`)=="object"?s`<div class="row">
              ${n("iodine_value/low","Lowest iodine value","g/100 g",!0)}
              ${n("iodine_value/high","Highest iodine value","g/100 g",!0)}
            </div>`:n("iodine_value","Iodine value","g/100 g",!0))}
      ${t("density","Density when molten",{at:"",low:"",high:""},()=>s`<div class="row">
            ${n("density/at","Measured at","\xB0C")} ${n("density/low","Lowest density","g/ml")}
            ${n("density/high","Highest density","g/ml")}
          </div>`)}
      ${t("melting_range","Melting range",{low:"",high:""},()=>s`<div class="row">
            ${n("melting_range/low","Melts from","\xB0C")} ${n("melting_range/high","Melts up to","\xB0C")}
          </div>`)}
    </div>
    ${xx(`${e}/fatty_acids`)}
    <div class="row">
      ${f({of:"own_fats",label:"Unsaponifiable, at most",at:`${e}/unsaponifiable`,unit:"%",optional:!0,short:!0})}
      ${f({of:"own_fats",label:"Note on the fat",at:`${e}/note`,optional:!0})}
    </div>`}var Ng=[["C8:0","Caprylic, C8:0"],["C10:0","Capric, C10:0"],["C12:0","Lauric, C12:0"],["C14:0","Myristic, C14:0"],["C16:0","Palmitic, C16:0"],["C16:1","Palmitoleic, C16:1"],["C18:0","Stearic, C18:0"],["C18:1","Oleic, C18:1"],["C18:2","Linoleic, C18:2"],["C18:3","Linolenic, C18:3"],["C20:0","Arachidic, C20:0"],["C20:1","Gondoic, C20:1"],["C22:0","Behenic, C22:0"],["C22:1","Erucic, C22:1"]];function xx(e){let t=Object.keys(g("own_fats",e)??{}),n=Ng.filter(([l])=>!t.includes(l)),o=l=>Ng.find(([d])=>d===l)?.[1]??l,i=l=>`${e}/${W(l)}`,r=l=>{let d=Array.isArray(g("own_fats",i(l))),c=(p,m)=>f({of:"own_fats",label:`${o(l)}, ${m}`,at:`${i(l)}/${p}`,unit:"%",short:!0});return s`<div class="row">
      ${d?s`${c(0,"lowest")} ${c(1,"highest")}`:f({of:"own_fats",label:o(l),at:i(l),unit:"%",short:!0})}
      <button
        type="button"
        aria-label="Remove ${o(l)}"
        @click=${()=>E("own_fats",`${o(l)} removed`,t.length>1?i(l):e,void 0)}
      >
        ×
      </button>
    </div>`};return s`<p class="question">
      Fatty acids, as the document lists them: the saponification value is checked against them
    </p>
    ${I("own_fats",e)} ${t.map(r)}
    <div class="row">
      ${$e({label:"Add a fatty acid",of:"own_fats",at:`${e}/`,answers:n,unsaid:"choose ...",optional:!0,chosen:"",take:l=>l&&E("own_fats",`${o(l)} added`,i(l),["",""])})}
    </div>`}function yi(e){let{pieces:t,batches:n,batch_limits:o,around:i,...r}=e,[l]=n,{pour:d,pipe:c,dust:p,lye_pot:m,bottles:_}=l;return{...r,pour:d,pipe:c,dust:p,lye_pot:m,bottles:_,batch:l,place:"batches.0",whippings:c?.whippings??[],whole:e}}var V=(e,t,n=`${t}s`)=>`${e} ${e===1?t:n}`,Tx=e=>e.cut?["loaf","loaves"]:["cast","casts"];function Nt(e,{pieces:t,casts:n}){let o=e.cut?V(t,"bar"):V(t,"piece");return n===t?o:`${o} from ${V(n,...Tx(e))}`}var Rx=e=>e===1?"once":`${e} times`,Fd=e=>e.batches.length>1,Ne=e=>e.pieces.batches>1;function jt(e){return e.length<2?e.join(""):`${e.slice(0,-1).join(", ")} and ${e.at(-1)}`}function _e(e){return Ne(e.whole)?`one batch, ${Nt(e.whole,e.batch)}`:""}var Hg=({whippings:e})=>e.length>1||(e[0]?.count??0)>1;function Cd(e,t){return Hg(e)?`${Nt(e.whole,t)}${t.count>1?`, whipped ${Rx(t.count)}`:""}`:""}function Ra(e,t){let n=Cd(e,t);return n&&`one whipping: ${n}`}var qg=e=>Ne(e.whole)||Hg(e),Sa=(e,t)=>`${V(e,"filling")} of ${V(t,"cavity","cavities")}`;var Ug=e=>[...a.files?.runs??[],...a.files?.orders??[],...a.files?.formulas??[]].find(t=>t.file===e)?.name||e;function Aa(e){let t=e?.used_by??[];return t.length?s`<p class="aside">Used by ${jt(t.map(Ug))}.</p>`:u}function vi(e){let t=e?.used_by??[];return t.length<2?u:s`<p class="mind" role="note">
    <strong>Caution</strong> Used by ${jt(t.map(Ug))}: a change here changes
    ${t.length===2?"both":`all ${t.length}`}.
  </p>`}var Dr={of:"own_fats",at:"/fats",least:1},Da={of:"own_tips",at:"/tips",least:1},Lo=({of:e,at:t})=>X(e,t);function zg(e){return Kg(e,Dr,"fats",t=>{let n=`/fats/${t}`;return D({of:"own_fats",name:String(Lo(Dr)[t].id),pointers:[n],summary:s`<span
        >${A("own_fats",`${n}/name`)||"Without a name"}<small
          >${Sx(`${n}/saponification_value`)}</small
        ></span
      >`,body:()=>Bd(n)})})}function Sx(e){let t=g("own_fats",e),n=t!==null&&typeof t=="object"&&!Array.isArray(t)?t:void 0,o=n?[n.low,n.high].filter(i=>i!=="").join(" to "):String(t??"");return o?`${o} mg KOH/g`:"saponification value not given"}function Jg(e){return Kg(e,Da,"tips",t=>{let n=`/tips/${t}`;return s`<div class="tip-row">
      ${kg(Lo(Da)[t])}
      ${D({of:"own_tips",name:`tip ${t}`,pointers:[n],summary:A("own_tips",`${n}/name`)||"Without a name",body:()=>xa({of:"own_tips",at:n})})}
    </div>`})}function Kg(e,t,n,o){let i=a.files?.[n].find(({file:l})=>l===e.file),r=l=>String(Lo(t)[l].name||`number ${l+1}`);return s`${sn(e)} ${an(e)}
    <section class="card" aria-labelledby="held-title">
      <h2 id="held-title" tabindex="-1">In ${e.file}</h2>
      ${vi(i)}
      ${e.shipped?s`<p class="aside">Built-in: your first change is saved as a copy.</p>`:u}
      <div class="items">
        ${Lo(t).map((l,d)=>s`<div class="held" id=${C(t,d)} role="group" aria-label=${r(d)}>
              ${o(d)} ${U(t,d,r(d))}
            </div>`)}
      </div>
    </section>`}var Ld=(e,t)=>({...Ta,id:fa(e,t),name:e});function Vg(e){let t=Ld(e,[...a.fats,...Lo(Dr)]);N(Dr,t,e),Ee("own_fats",String(t.id)),z(ne("own_fats",`/fats/${Lo(Dr).length-1}/source`))}var Id=e=>({name:e});function Qg(e){N(Da,Id(e),e);let t=Lo(Da).length-1;Ee("own_tips",`tip ${t}`),z(It(vt("own_tips",`/tips/${t}`,"own")))}var Gg=(e,t,n)=>{let o=new Map;for(let i=t;i<=n;i++)o.set(e[i],i);return o},Pa=ca(class extends hi{constructor(e){if(super(e),e.type!==yn.CHILD)throw Error("repeat() can only be used in text expressions")}dt(e,t,n){let o;n===void 0?n=t:t!==void 0&&(o=t);let i=[],r=[],l=0;for(let d of e)i[l]=o?o(d,l):l,r[l]=n(d,l),l++;return{values:r,keys:i}}render(e,t,n){return this.dt(e,t,n).values}update(e,[t,n,o]){let i=pg(e),{values:r,keys:l}=this.dt(t,n,o);if(!Array.isArray(i))return this.ut=l,r;let d=this.ut??=[],c=[],p,m,_=0,b=i.length-1,w=0,x=r.length-1;for(;_<=b&&w<=x;)if(i[_]===null)_++;else if(i[b]===null)b--;else if(d[_]===l[w])c[w]=Yn(i[_],r[w]),_++,w++;else if(d[b]===l[x])c[x]=Yn(i[b],r[x]),b--,x--;else if(d[_]===l[x])c[x]=Yn(i[_],r[x]),gi(e,c[x+1],i[_]),_++,x--;else if(d[b]===l[w])c[w]=Yn(i[b],r[w]),gi(e,i[_],i[b]),b--,w++;else if(p===void 0&&(p=Gg(l,w,x),m=Gg(d,_,b)),p.has(d[_]))if(p.has(d[b])){let K=m.get(l[w]),Oe=K!==void 0?i[K]:null;if(Oe===null){let mo=gi(e,i[_]);Yn(mo,r[w]),c[w]=mo}else c[w]=Yn(Oe,r[w]),gi(e,i[_],Oe),i[K]=null;w++}else ma(i[b]),b--;else ma(i[_]),_++;for(;w<=x;){let K=gi(e,c[x+1]);Yn(K,r[w]),c[w++]=K}for(;_<=b;){let K=i[_++];K!==null&&ma(K)}return this.ut=l,pa(e,c),Be}});async function de(e){h({list_complaint:""});try{await e()}catch(t){h({list_complaint:t instanceof Error?t.message:String(t)}),t instanceof y&&await _t().catch(()=>{})}}var Wd=()=>{de(nh)},Yg=()=>{de(oh)};function kt(e){return s`<h1 tabindex="-1">${e}</h1>
    ${a.list_complaint?s`<p class="alarm" role="alert">${a.list_complaint}</p>`:u}
    ${a.list_told&&lr()?s`<p class="told" role="status">
            ${a.list_told} <button type="button" @click=${Wd}>Undo</button>
          </p>`:u}
    ${(a.files?.cut??[]).map(t=>s`<p class="alarm">
          More lies in ${t.folder} than is looked at: ${t.looked_at} files and folders. Some of your runs, moulds or
          formulas may be missing below; keep them in a folder of their own, and start brimwright there.
        </p>`)}`}var Zg=new Map,Xg=Promise.resolve();function e_(e,t=""){let n=`${e}
${t}`,o=Zg.get(n);return o||(o=Xg.then(()=>Ax(e)),Xg=o,Zg.set(n,o)),o}async function Ax(e){try{let t=await Jt({kind:"glb",gauge:{file:e}}),n=li(await t.arrayBuffer());return dr(n.find(o=>o.name==="cavity")??n[0])}catch(t){if(t instanceof y)return;throw t}}var Ed=class extends HTMLElement{static observedAttributes=["file","changed"];#n;#e=new IntersectionObserver(([t])=>t.isIntersecting&&this.#t(),{rootMargin:"200px"});connectedCallback(){this.#e.observe(this)}disconnectedCallback(){this.#e.disconnect()}attributeChangedCallback(){this.#e.disconnect(),this.isConnected&&this.#e.observe(this)}#t(){this.#e.disconnect();let t=this.getAttribute("file")??"";requestIdleCallback(()=>{e_(t,this.getAttribute("changed")??"").then(n=>{t===this.getAttribute("file")&&(this.#n=n,this.#i())})},{timeout:1e3})}#i(){let t=this.#n;if(!t)return void ht(u,this);let{left:n,right:o,floor:i,brim:r,loops:l}=t,d=.04*Math.max(o-n,r-i),c=[n-d,-r-d,o-n+2*d,r-i+2*d];ht(s`<svg viewBox=${c.join(" ")} aria-hidden="true">
        <path class="shaded pour" fill-rule="evenodd" d=${ur(l)} />
      </svg>`,this)}};customElements.define("mould-picture",Ed);var Ht=(e,t)=>s`<ul class="cards">
    ${Pa(e,({file:n})=>n,t)}
  </ul>`;function ln(e){let{one:t,facts:n,picture:o,open:i}=e,r=a.list_open?.file===t.file?a.list_open:void 0,l=t.name||t.file;return s`<li class="file">
    <button type="button" class="open" @click=${()=>{de(i)}}>
      ${o?s`<mould-picture file=${o}></mould-picture>`:u}
      <span class="told-of"
        ><b>${l}</b>${n.length?s`<span>${n.join(", ")}</span>`:u}
        <span class="file-name">${t.shipped?"built-in":t.file}</span></span
      >
    </button>
    <button
      type="button"
      class="dots"
      aria-expanded=${r?"true":"false"}
      aria-label="Name, note, copy or remove: ${l}"
      @click=${()=>Dx(e,!r)}
    >
      <span aria-hidden="true">⋯</span>
    </button>
    ${r?Px(e,r):u}
  </li>`}function Dx({one:e},t){let{file:n,name:o,note:i}=e;h({list_open:t?{file:n,name:o,note:i,stem:ai(n)}:void 0})}function Px(e,t){let{kind:n,one:o}=e,i=s`<button type="button" @click=${()=>{de(()=>Mx(n,o))}}>Copy</button>`;if(o.shipped)return s`<div class="acts"><div class="choice">${i}</div></div>`;let r=["name","note"].every(c=>o[c]===t[c])&&ai(o.file)===t.stem,l=n.name==="fats"||n.name==="tips"||t.name.trim()!=="",d=()=>{de(()=>Bx(e,t))};return s`<div class="acts">
    ${Aa(o)} ${n.called?Nd(n.called==="for"?"For":"Name",t,"name"):u}
    ${n.name==="tips"?u:Nd("Note",t,"note")} ${Nd("Name of the file",t,"stem")}
    <div class="choice">
      <button type="button" class="strong" ?disabled=${r||!l||!t.stem.trim()} @click=${d}>
        Save
      </button>
      ${i}
      <button type="button" @click=${()=>{de(()=>t_(o,t,!1))}}>Remove</button>
    </div>
    ${t.used_by?Ox(o,t):u}
  </div>`}function Nd(e,t,n){let o=`list-${n}`,i=r=>v(t,{[n]:r.target.value});return s`<div class="field">
    <label for=${o}>${e}</label>
    <input id=${o} .value=${M(t[n])} @input=${i} autocomplete="off" spellcheck="false" />
  </div>`}function Ox(e,t){return s`<div role="alert">
    <p class="alarm">${t.used_by.join(", ")} cannot be planned without it.</p>
    <button type="button" @click=${()=>{de(()=>t_(e,t,!0))}}>Remove it even so</button>
  </div>`}async function Mx(e,t){let n=await ih(e,t),o=a.files?.[e.list].find(i=>i.file===n);o&&(h({list_open:{file:n,name:o.name,note:o.note,stem:ai(n)}}),requestAnimationFrame(()=>document.querySelector("#list-name, #list-stem")?.select()))}async function Bx({kind:e,one:t},{name:n,note:o,stem:i}){await sh(e,t,{name:n.trim(),note:o.trim(),stem:i.trim()}),h({list_open:void 0})}async function t_(e,t,n){let o=e.used_by??[];if(o.length&&!n)return v(t,{used_by:o});try{await ah(e,n),h({list_open:void 0})}catch(i){let r=i instanceof y?i.answer.used_by:void 0;if(!r)throw i;v(t,{used_by:r})}}function Oa(e,t,n){let o=[...a.files?.[e.list]??[]].sort((r,l)=>Number(r.shipped)-Number(l.shipped));return o.length?Ht(o,r=>ln({kind:e,one:r,facts:Fx(r),open:()=>n(r.file)})):s`<p class="aside">None yet. ${t}</p>`}var n_=4;function Fx({holds:e=[],changed:t}){let n=e.length-n_,o=n>0?[...e.slice(0,n_),`${n} more`]:e;return[o.length?jt(o):"",t?`changed ${oe(t)}`:""].filter(Boolean)}var Pr="";function Ma({label:e,add:t,act:n,tried:o}){let i=()=>{o(async()=>{await n(Pr.trim()),Pr="",Q()})},r=l=>{Pr=l.target.value,Q()};return s`<div class="row">
    <div class="field">
      <label for="new-held">${e}, by name</label>
      <input id="new-held" .value=${M(Pr)} @input=${r} autocomplete="off" spellcheck="false" />
    </div>
    <button type="button" ?disabled=${!Pr.trim()} @click=${i}>${t}</button>
  </div>`}function xt(e){let t=a.removed.filter(n=>n.kind===e);return t.length?s`<details class="removed">
    <summary>Removed, and kept still: ${t.length}</summary>
    <p class="hint">
      What is removed is kept for two years, and comes back from here. Later it is deleted when something else is
      removed.
    </p>
    <ul class="limits">
      ${t.map(Cx)}
    </ul>
  </details>`:u}function Cx(e){let t=e.name||e.file,n=`removed ${e.removed}`,o=a.open.has(n);return s`<li>
    <p>
      <b>${t}</b> <small>${e.file}, removed ${oe(e.removed_at)}, kept until ${oe(e.kept_until)}</small>
    </p>
    <div class="choice">
      <button type="button" aria-label="Bring back ${t}" @click=${()=>{de(()=>lh(e))}}>
        Bring back
      </button>
      ${o?s`<button
                type="button"
                aria-label="Delete ${t} for good"
                @click=${()=>{de(()=>uh(e))}}
              >
                Delete it for good
              </button>
              <button type="button" @click=${()=>He("open",n)}>Keep it</button>`:s`<button type="button" aria-label="Delete ${t} ..." @click=${()=>He("open",n)}>
              Delete ...
            </button>`}
    </div>
  </li>`}function i_(){let e=Un();return s`${kt("Fats")}
    <section aria-labelledby="own-fats">
      <h2 id="own-fats">Your own fats</h2>
      ${Oa(Vt,"Each file is named by the formulas that use its fats.",t=>ar(Vt,t))}
      ${e?zg(e):u}
      ${Ma({label:"A new fat of your own",add:e?`Add it to ${e.file}`:"Begin a file with it",act:t=>e?Promise.resolve(Vg(t)):Js(Vt,Ld(t,a.fats)),tried:de})}
    </section>
    ${Lx()} ${xt("fats")}`}var o_="fats that are listed";function Lx(){let e=a.finding?.key===o_?a.finding.text:"",t=a.fats.filter(n=>vn(n,e)!==void 0);return s`<section aria-labelledby="built-in-fats">
    <h2 id="built-in-fats">Built-in fats</h2>
    <div class="row">
      <div class="field">
        <label for="find-fat">Find by any name</label>
        <input
          id="find-fat"
          .value=${M(e)}
          @input=${n=>h({finding:{key:o_,text:n.target.value}})}
          autocomplete="off"
          spellcheck="false"
        />
      </div>
    </div>
    <div class="side-by-side" role="region" tabindex="0" aria-label="Built-in fats and their figures">
      <table class="figures fats">
        <thead>
          <tr>
            <th scope="col">Fat</th>
            <th scope="col">Saponification value, mg KOH/g</th>
            <th scope="col">INCI name</th>
          </tr>
        </thead>
        <tbody>
          ${t.map(n=>Ix(n,e))}
        </tbody>
      </table>
    </div>
    ${t.length?u:s`<p class="hint">None is called so.</p>`}
  </section>`}function Ix(e,t){let{low:n,high:o,typical:i}=e.saponification_value_mg_koh_per_g,r=vn(e,t),l=d=>R(d,1);return s`<tr>
    <th scope="row">${e.name}${r&&r!==e.name?s` <small>${r}</small>`:u}</th>
    <td>${l(i)} <small>${l(n)} to ${l(o)}</small></td>
    <td>${e.inci}</td>
  </tr>`}var r_=e=>e.goes_into==="lye",s_=({role:e})=>e==="alkali",Wx=e=>s_(e)?"down":"nearest",Io=(e,t)=>te(e,t,Wx(t));function Ba(e){let t=e.ingredients.map((i,r)=>({one:i,i:r})).filter(({one:i})=>r_(i)),n=({one:i})=>i.role==="water",o=({one:i})=>s_(i);return[...t.filter(n),...t.filter(i=>!n(i)&&!o(i)),...t.filter(o)]}function a_(e){return e.ingredients.map((t,n)=>({one:t,i:n})).filter(({one:t})=>!r_(t))}function jd(e){let t=A(e,"/measured_density");return s`<section class="card" aria-labelledby="pouring-title">
    <h2 id="pouring-title">Pouring and curing</h2>
    <div class="row">
      ${f({label:"Temperature at the pour",of:e,at:"/pour_temperature",hint:"The batter's, with its unit: 38 \xB0C, 100 \xB0F.",term:"batter"})}
      ${f({label:"Cure",of:e,at:"/cure",unit:"days",optional:!0,hint:"Such as 35 days.",term:"cure"})}
    </div>
    <div class="row">
      ${f({label:"Unmould after",of:e,at:"/unmould_after",unit:"h",optional:!0,hint:"From the pour on, whatever the mould's own hours are: 18 h."})}
      ${f({label:"Cut within",of:e,at:"/cut_within",unit:"h",optional:!0,hint:"From the pour on: 48 h. A salt bar is cut the day it is poured: 5 h."})}
    </div>
    ${Hx(e)}
    ${D({of:e,name:"density",pointers:["/measured_density"],summary:`Measured density${t&&`: ${t}`}`,body:()=>f({label:"Of the plain, unwhipped batter, by weigh-cup",of:e,at:"/measured_density",unit:"g/ml",optional:!0,hint:"Taken in place of the computed one, and compared with it."})})}
  </section>`}var Ex=[["unsaid","Not given"],["share","As a share"],["law","As a course in time"],["weighed","From my weighings"]],l_={after:"",mass:""},u_=3,Nx={unsaid:{},share:{water_lost_in_cure:""},law:{drying:{water_lost_in_the_end:"",time_to_63_percent:""}},weighed:{drying:{weighings:Array.from({length:u_},()=>l_)}}};function jx(e){return g(e,"/drying/weighings")!==void 0?"weighed":g(e,"/drying")!==void 0?"law":g(e,"/water_lost_in_cure")===void 0?"unsaid":"share"}function Hx(e){let t=jx(e);return s`${T({of:e,question:"Water that leaves in the cure",at:"",asked_at:"/drying",chosen:t,answers:Ex,puts:o=>({...fe(e,"",["drying","water_lost_in_cure"]),...Nx[o]})})}
  ${t==="share"?s`<div class="row">
          ${f({label:"Of the batter's water, gone when it is sold",of:e,at:"/water_lost_in_cure",unit:"%"})}
        </div>`:u}
  ${t==="law"?s`<div class="row">
          ${f({label:"Of the batter's water, gone in the end",of:e,at:"/drying/water_lost_in_the_end",unit:"%"})}
          ${f({label:"After this, 63 % of that is gone",of:e,at:"/drying/time_to_63_percent",unit:"days"})}
        </div>`:u}
  ${t==="weighed"?qx(e):u}`}function qx(e){let t={of:e,at:"/drying/weighings",least:u_};return s`<p class="hint">Of one plain piece, or of the same few together, in order of time.</p>
    ${k(t).map((n,o)=>s`<div class="row named" id=${C(t,o)}>
          ${f({label:"Time since the pour",of:e,at:`${t.at}/${o}/after`,unit:"days",short:!0})}
          ${f({label:"Mass",of:e,at:`${t.at}/${o}/mass`,unit:"g",short:!0})}
          ${U(t,o,`weighing ${o+1}`)}
        </div>`)}
    ${G(t,"One more weighing",()=>N(t,l_,"weighing"))}`}var Ux=["citric acid, anhydrous","citric acid monohydrate","lactic acid (100 %)","acetic acid (100 %)","ascorbic acid","malic acid","tartaric acid","potassium hydrogen tartrate","oxalic acid, anhydrous","oxalic acid dihydrate","glycolic acid (100 %)","salicylic acid","benzoic acid","phosphoric acid (100 %)","vinegar, 5 g acetic acid per 100 g","lactic acid 88 % (of which part is lactate ester, titrated as total acid)","sodium bicarbonate","potassium bicarbonate"],Fa=e=>Qn(e).map(t=>[t.id,t.name]),d_=["unsaid","Not given"],c_=["none","Holds none"],p_=e=>e===void 0?"unsaid":e==="none"?"none":"some",zx=e=>t=>t==="some"?e:t==="none"?"none":void 0;function m_(e,t){return Hd(e,`${t}/contains_fat`,[d_,c_,["some","Holds fat"]],Fa(e))}function Hd(e,t,n,o){let i=p_(g(e,t)),r=n.some(([l])=>l===i)?i:void 0;return s`${T({of:e,question:"Fat in it",at:t,chosen:r,answers:n,puts:zx({fat:"",share:""})})}
  ${i==="some"?s`<div class="row">
          ${$e({label:"Which fat",of:e,at:`${t}/fat`,answers:o,unsaid:"choose ..."})}
          ${f({label:"Fat in what is weighed",of:e,at:`${t}/share`,unit:"%",short:!0})}
        </div>`:u}`}var Jx=[d_,c_,["some","Holds acid"],["typed","By what it takes up"]],Kx={unsaid:void 0,none:"none",some:{acid:"",share:""},typed:{takes_up:""}};function qd(e,t){let n=`${t}/contains_acid`,o=g(e,`${n}/takes_up`)!==void 0?"typed":p_(g(e,n));return s`${T({of:e,question:"Acid in it",at:n,chosen:o,answers:Jx,puts:i=>Kx[i]})}
  ${o==="some"?s`<div class="row">
          ${$e({label:"Which acid",of:e,at:`${n}/acid`,answers:Ux.map(i=>[i,i]),unsaid:"choose ..."})}
          ${f({label:"Of that acid in what is weighed",of:e,at:`${n}/share`,unit:"%",short:!0})}
        </div>`:u}
  ${o==="typed"?s`<div class="row">
          ${f({label:"Taken up by 1 g of it",of:e,at:`${n}/takes_up`,unit:"mg KOH/g",hint:"From its supplier's document."})}
        </div>`:u}
  ${o==="some"||o==="typed"?Ud(e,`${n}/confirmed`,"An essence or concentrate, stronger than a juice, vinegar, wine or sour milk"):u}`}function Ud(e,t,n){let o=g(e,t)===!0?"yes":"no";return T({of:e,question:n,at:t,chosen:o,answers:[["no","No"],["yes","Yes"]],puts:i=>i==="yes"?!0:void 0})}var Vx=["tsp/lb","tbsp/lb","tsp/kg"],Ca=["%","g/kg",...Vx].flatMap(e=>[`${e} of fats`,`${e} of batter`]),h_=[...Ca,"% of finished soap","g/kg of finished soap"];function f_(e,t){let n=e.trim().replaceAll(/\s+/g," "),o=[...t].sort((i,r)=>r.length-i.length).find(i=>n.endsWith(i))??"";return[o?n.slice(0,-o.length).trim():e,o]}function La(e,t,n,o,i=!1){let r=J(e,t),[l,d]=f_(A(e,t),o),c=a.typed?.key===r?a.typed.text:l;!i&&!(l.trim()&&d)&&at(e,t,r,l.trim()?`${n}: of what`:n);let m=We(e,t),_=(w,x)=>{let K=`${w.trim()} ${x}`.trim();Z(e,t,i&&!w.trim()?void 0:K),Q()},b=w=>{let x=w.target.value,[K,Oe]=f_(x,o);h({typed:{key:r,text:x}}),_(K,Oe||d)};return s`<div class="field rate ${m?"wants":""}">
    <label for=${r}>${n}</label>
    <div class="rate-of">
      <input
        id=${r}
        .value=${M(c)}
        @input=${b}
        @blur=${Bo}
        inputmode="text"
        autocomplete="off"
        spellcheck="false"
        aria-invalid=${m?"true":"false"}
        aria-describedby=${m?`${r}-said`:u}
      />
      <select
        aria-label="${n}: of what"
        @change=${w=>_(c,w.target.value)}
      >
        <option value="" .selected=${M(d==="")}>of what?</option>
        ${o.map(w=>s`<option value=${w} .selected=${M(w===d)}>${w}</option>`)}
      </select>
    </div>
    ${ge(r,m)}
  </div>`}function Qx(e){let t=e.map(i=>/^\s*(\d+(?:[.,]\d+)?)\s*%\s*$/.exec(String(i??""))?.[1]),n=t.filter(i=>i!==void 0).map(i=>Number(i.replace(",","."))),o=n.reduce((i,r)=>i+r,0);return{sum:Math.round(o*1e6)/1e6,unread:t.length-n.length}}var Gx=.01+1e-9;function ki(e,t){let{sum:n,unread:o}=Qx(t),i=l=>`${String(Math.round(l*1e6)/1e6)} %`;if(o===t.length)return`${e} have no share yet.`;if(o)return`${e} add to ${i(n)} so far; ${o===1?"one has no share that can be added":`${o} have no share that can be added`}.`;let r=100-n;return Math.abs(r)<=Gx?`${e} add to ${i(n)}.`:r>0?`${e} add to ${i(n)}: ${i(r)} ${r===1?"is":"are"} missing.`:`${e} add to ${i(n)}: ${i(-r)} too much.`}var g_=(e,t)=>Qn(e).find(n=>n.id===t)?.name??t,Or=e=>({of:e,at:"/fats",in_order:!0,stays:!0}),Ia=e=>k(Or(e));function Kd(e){let t=Ia(e),n=a.picking?.of===e&&a.picking.row===t.length;return s`<section class="card" aria-labelledby="fats-title">
    <h2 id="fats-title">Fats</h2>
    <ol class="formula-rows">
      ${t.map((o,i)=>Yx(e,i,t))}
    </ol>
    <p class="total" role="status">
      ${t.length?ki("The fats",t.map(o=>o.share)):"No fat yet."}
    </p>
    ${t.length?u:at(e,"/fats",J(e,"/fats"),"The fats")}
    ${n?$_(e):G(Or(e),"Add a fat",()=>__(e,t.length))} ${rT(e)}
  </section>`}function Yx(e,t,n){let o=`/fats/${t}`,i=g_(e,String(n[t].fat??""))||"Which fat?",r=ve(e,`${o}/fat`)??ve(e,o),l=a.picking?.of===e&&a.picking.row===t;return s`<li class="formula-row" id=${C(Or(e),t)}>
    <div class="fat-line">
      <button
        type="button"
        class="fat-name"
        id=${J(e,`${o}/fat`)}
        aria-expanded=${l?"true":"false"}
        aria-label="${i}: choose another fat"
        @click=${()=>l?zd():__(e,t)}
      >
        ${i}
      </button>
      ${f({label:"Share",of:e,at:`${o}/share`,unit:"%",short:!0})} ${U(Or(e),t,i)}
    </div>
    ${r?s`<p class="complaint">${r}</p>`:u} ${l?$_(e):u}
    ${jg(e,String(n[t].fat??""))}
    ${D({of:e,name:o,pointers:[`${o}/saponification_value`,`${o}/confirmed`,`${o}/lot`],summary:`Your lot${eT(n[t])}`,body:()=>oT(e,t)})}
  </li>`}function __(e,t){h({picking:{of:e,row:t,text:""}}),z(L("find-fat")),requestAnimationFrame(()=>document.querySelector(".picker")?.scrollIntoView({block:"start"}))}function zd(){let e=a.picking;h({picking:void 0}),e&&z(ne(e.of,e.row<Ia(e.of).length?`/fats/${e.row}/fat`:"/fats"))}function Jd(e,t){let{row:n}=a.picking,o=Ia(e);h({picking:void 0});let i=o[n]?{fat:t,share:o[n].share??""}:{fat:t,share:""};kr(Or(e),`${g_(e,t)} chosen`,[...o.slice(0,n),i,...o.slice(n+1)],ne(e,`/fats/${n}/share`))}function $_(e){let{row:t,text:n}=a.picking,o=Ia(e).map(m=>m.fat),i=Zx(e,n),r=i.filter(m=>!o.includes(m.id)||o[t]===m.id),l=r.find(m=>m.id===a.picking.lit),d=m=>{h({picking:{of:e,row:t,text:m.target.value}})},c=m=>{let _=l?r.indexOf(l)+m:m>0?0:r.length-1,b=r[(_+r.length)%r.length];b&&(h({picking:{of:e,row:t,text:n,lit:b.id}}),requestAnimationFrame(()=>document.getElementById(`fat-${b.id}`)?.scrollIntoView({block:"nearest"})))},p=m=>{m.key==="Escape"&&zd(),(m.key==="ArrowDown"||m.key==="ArrowUp")&&(m.preventDefault(),c(m.key==="ArrowDown"?1:-1));let _=r.find(w=>qe(w.name)===qe(n.trim())),b=l??(r.length===1?r[0]:_);m.key==="Enter"&&b&&Jd(e,b.id)};return s`<div class="picker" role="group" aria-label="Which fat?">
    <div class="row">
      <div class="field">
        <label for="find-fat">Find a fat by its name</label>
        <input
          id="find-fat"
          role="combobox"
          aria-expanded="true"
          aria-controls="fats-found"
          aria-activedescendant=${l?`fat-${l.id}`:u}
          .value=${n}
          @input=${d}
          @keydown=${p}
          autocomplete="off"
          spellcheck="false"
        />
      </div>
      <button type="button" @click=${zd}>Close the list</button>
    </div>
    <p class="hint" role="status">
      ${i.length?`${i.length===1?"One fat: Enter takes it":`${i.length} fats: the arrow keys choose, Enter takes`}.`:"No fat of that name."}
    </p>
    <div class="choice" id="fats-found" role="listbox" aria-label="Fats found">
      ${i.map(m=>{let _=o.includes(m.id)&&o[t]!==m.id,b=vn(m,n);return s`<button
          type="button"
          role="option"
          id="fat-${m.id}"
          class=${m===l?"lit":""}
          ?disabled=${_}
          aria-selected=${m===l||o[t]===m.id?"true":"false"}
          @click=${()=>Jd(e,m.id)}
        >
          ${m.name}${b===m.name||!b?"":`, ${b}`}${_?" (is in it)":""}
        </button>`})}
    </div>
    <p class="choice">
      <button type="button" @click=${()=>{Xx(e,n)}}>
        ${n.trim()?`Describe "${n.trim()}" as a fat of my own`:"Describe a fat of my own"}
      </button>
    </p>
  </div>`}function Zx(e,t){let n=Qn(e).filter(l=>vn(l,t)!==void 0),o=t.split(/\s+/).filter(l=>l.length>2);if(n.length||o.length<2)return n;let i=l=>o.filter(d=>vn(l,d)!==void 0).length,r=Math.max(...Qn(e).map(i));return r?Qn(e).filter(l=>i(l)===r):[]}async function Xx(e,t){if(!await zs(e))return;let o=t.trim(),i=fa(o,[...a.fats,...X("own_fats","/fats")]),r=X("own_fats","/fats").length;Z("own_fats",`/fats/${r}`,{...Ta,id:i,name:o}),Jd(e,i),Ee("own_fats",i),z(ne("own_fats",`/fats/${r}/${o?"inci":"name"}`))}function eT(e){let t=e.saponification_value,n=t,i=t===""||t!==null&&typeof t=="object"&&n.low===""?"to be filled in":t===void 0?"published values":t!==null&&typeof t=="object"?`${String(n.low)} to ${String(n.high)} mg KOH per g`:`${String(t)} mg KOH per g`;return`: ${e.lot?`${String(e.lot)}, `:""}${i}`}var tT=[["published","As published"],["one","One value, from the supplier"],["range","A range, from the supplier"]],nT={published:void 0,one:"",range:{low:"",typical:"",high:""}};function oT(e,t){let n=`/fats/${t}/saponification_value`,o=g(e,n),i=o===void 0?"published":o!==null&&typeof o=="object"?"range":"one",r=g(e,`/fats/${t}/confirmed`)!==void 0,l=(d,c)=>f({label:d,of:e,at:c,number:!0,short:!0});return s` ${f({label:"Lot",of:e,at:`/fats/${t}/lot`,optional:!0,short:!0})}
  ${T({of:e,question:"Saponification value, mg of KOH for 1 g of fat (ISO 3657)",at:n,is_told_elsewhere:i==="one",chosen:i,answers:tT,puts:d=>nT[d],hint:iT(e,A(e,`/fats/${t}/fat`))})}
  ${i==="one"?s`<div class="row">${l("Saponification value",n)}</div>`:u}
  ${i==="range"?s`<div class="row">
          ${l("Lowest",`${n}/low`)} ${l("Typical",`${n}/typical`)} ${l("Highest",`${n}/high`)}
        </div>`:u}
  ${i!=="published"||r?Ud(e,`/fats/${t}/confirmed`,"Checked in the supplier's document, though what is known of the fat contradicts it"):u}`}function iT(e,t){let n=Qn(e).find(l=>l.id===t);if(!n)return;if("own"in n)return n.own?`In your file: ${n.own}.`:void 0;let{low:o,high:i,source:r}=n.saponification_value_mg_koh_per_g;return`Published: ${o} to ${i} (${r}).`}function rT(e){let t=hr(e),n=Array.isArray(t)?`In it: ${t.map(i=>i.name).join(", ")}.`:t==="none"?"No such file is found from here.":void 0,o=A(e,"/own_fats");return D({of:e,name:"own fats",pointers:["/own_fats"],summary:`A file of your own fats${o&&`: ${o}`}`,body:()=>f({label:"Its name, as it lies beside this formula",of:e,at:"/own_fats",optional:!0,hint:n??"Such as studio.fats.json. Its fats then stand in the list of fats."})})}var sT=e=>me.includes(e);function Wa(){let e=a.complaint;return!e?.field||e.lye_heavy?!1:_i().some(({of:t,at:n})=>yt(t)&&(n===e.field||n.startsWith(`${e.field}/`)))}function Mr(){let e=a.complaint?_i():[];return e.length?s`<div class="needed">
    <p role="status"><strong>Still needed for the figures</strong>: ${e.length}</p>
    <ul class="choice">
      ${e.map(t=>s`<li>
            <button type="button" @click=${()=>aT(t)}>
              ${t.part?s`<small>${t.part}</small> `:u}${t.label}
            </button>
          </li>`)}
    </ul>
  </div>`:u}function aT({of:e,id:t,folds:n}){for(let o of n)le(o);h({has_asked:!0}),sT(e)?(a.view!=="formula"||a.formula_of!==e)&&Ye(e):a.view!=="set-up"&&!(e==="own_fats"&&a.view==="formula")&&h({view:"set-up"}),requestAnimationFrame(()=>z(L(t)))}var b_="danger-of-superfat";function Vd(e,t){return s`<section class="card" aria-labelledby="lye-title">
    <h2 id="lye-title">Superfat, alkali, water</h2>
    <div class="row">
      ${f({label:"Superfat (share of all fat left unsaponified)",of:e,at:"/superfat",unit:"%",term:"superfat",described_by:Gn(e).length?b_:void 0})}
    </div>
    ${yr(e,b_)} ${lT(e)} ${fT(e,t)}
  </section>`}function lT(e){let t=X(e,"/alkali"),n=t.length>1?"both":t[0]?.alkali;return s`${T({of:e,question:"Alkali",term:"alkali",at:"/alkali",chosen:n,answers:[["NaOH","NaOH, for bars"],["KOH","KOH, for soft soap"],["both","Both"]],puts:i=>uT(t,i),then:i=>i==="both"?"/alkali/0/share":"/alkali/0/purity"})}
  ${t.map((i,r)=>dT(e,i,r,t.length>1))}
  ${t.length>1?s`<p class="total" role="status">
          ${ki("The two",t.map(i=>i.share))}
        </p>`:u}`}function uT(e,t){let n=(o,i)=>({purity:"",...e.find(r=>r.alkali===o),alkali:o,share:i});return t==="both"?[n("NaOH",""),n("KOH","")]:[n(t,"100 %")]}function dT(e,t,n,o){let i=`/alkali/${n}`,r=String(t.alkali??""),l=ve(e,i)??ve(e,`${i}/alkali`);return s`<div class="formula-row">
    ${l?s`<p class="complaint">${l}</p>`:u}
    <div class="row">
      ${o||t.share!=="100 %"?f({label:`${r}: share of the fats it saponifies`,of:e,at:`${i}/share`,unit:"%",hint:"Counted by saponification, not by the weight of the alkali."}):u}
      ${f({label:`${r}: purity`,of:e,at:`${i}/purity`,unit:"%",hint:"Pure alkali in what is weighed, from the supplier's document.",term:n===0?"purity":void 0})}
    </div>
    ${D({of:e,name:i,pointers:[`${i}/purity_range`],summary:`Guaranteed purity range${cT(t.purity_range)}`,body:()=>pT(e,i)})}
  </div>`}var cT=e=>Array.isArray(e)?`: ${e.map(String).join(" to ")}`:"";function pT(e,t){let n=`${t}/purity_range`,o=g(e,n)!==void 0;return s`${T({of:e,question:"Guaranteed range",at:n,chosen:o?"said":"none",answers:[["none","Not given"],["said","From ... to"]],puts:i=>i==="none"?void 0:["",""]})}
  ${o?s`<div class="row">
          ${f({label:"Lowest",of:e,at:`${n}/0`,unit:"%",short:!0})}
          ${f({label:"Highest",of:e,at:`${n}/1`,unit:"%",short:!0})}
        </div>`:u}`}var mT={lye_strength:"By the lye's strength",water_to_alkali:"By parts to the alkali",share_of_fats:"By the fats"};function fT(e,t){let n=Object.keys(g(e,"/water")??{}),o=n.length===1?n[0]:void 0,i=Object.entries(mT);return s`${T({of:e,question:"How is the water given?",at:"/water",chosen:o,answers:i,puts:r=>({[r]:""}),then:r=>`/water/${r}`,hint:gT(t)})}
    <div class="row">${n.map(r=>hT(e,r))}</div>`}function hT(e,t){let n=`/water/${t}`;return t==="water_to_alkali"?f({label:"Parts of water for 1 part of pure alkali",of:e,at:n,number:!0}):t==="lye_strength"?f({label:"Strength: pure alkali in alkali and water together",of:e,at:n,unit:"%"}):f({label:"Water, as a share of the fats",of:e,at:n,unit:"%"})}function gT(e){if(!(!e||a.is_old))return`It now makes a strength of ${R(e.lye_strength_percent,1)} %; ${R(e.water_to_pure_alkali,2)} parts to 1 of pure alkali; ${R(e.water_percent_of_fats,1)} % of the fats.`}function to(e,t,n){let o=_T(e,t);return D({of:e,name:`${t} label`,pointers:["inci","allergens","document"].map(i=>`${t}/${i}`),summary:`For the label${o&&`: ${o}`}`,body:()=>s`${bT(e,`${t}/inci`,n)}
        <p class="question">Fragrance allergens in it</p>
        ${w_(e,`${t}/allergens`,"Allergen","Add an allergen",(i,r)=>wT(e,i,r))}
        ${f({label:"Supplier's document, with its date",of:e,at:`${t}/document`,optional:!0})}`})}function _T(e,t){let n=X(e,`${t}/allergens`).length;return[g(e,`${t}/inci`)===void 0?"":"INCI given",n?`${n} ${n===1?"allergen":"allergens"}`:""].filter(Boolean).join(", ")}var Qd={name:"",share:""},$T={unsaid:void 0,one:"",many:[Qd]};function bT(e,t,n){let o=g(e,t),i=o===void 0?"unsaid":Array.isArray(o)?"many":"one",r=l=>l==="many"&&o?[{...Qd,name:o}]:$T[l];return s`${T({of:e,question:`INCI of ${n}`,at:t,is_told_elsewhere:i!=="unsaid",chosen:i,answers:[["unsaid","Not given"],["one","One name"],["many","A composition"]],puts:r})}
  ${i==="one"?f({label:"INCI name",of:e,at:t}):u}
  ${i==="many"?s`<p class="hint">All that is in it, water too, until it adds to 100 %.</p>
          ${w_(e,t,"INCI name","One more INCI name")}`:u}`}function wT(e,t,n){return T({of:e,question:`Allergen ${n+1}: on the EU's list?`,at:`${t}/listed`,chosen:g(e,`${t}/listed`)===!1?"other":"as_named",answers:[["as_named","Where its name stands there"],["other","No, another substance"]],puts:o=>o==="other"?!1:void 0})}function w_(e,t,n,o,i){let r={of:e,at:t};return s`${k(r).map((l,d)=>s`<div class="row named" id=${C(r,d)}>
        ${f({label:`${n} ${d+1}`,of:e,at:`${t}/${d}/name`})}
        ${f({label:`Share ${d+1}`,of:e,at:`${t}/${d}/share`,unit:"%",short:!0})}
        ${i?.(`${t}/${d}`,d)??u} ${U(r,d,String(l.name||`${n} ${d+1}`))}
      </div>`)}
  ${G(r,o,()=>N(r,Qd,n))}`}var yT=[{list:"liquids",title:"Liquids in place of water",add:"Add a liquid",aside:"Milk, coconut milk, pur\xE9es, brine.",row:MT},{list:"additives",title:"Additives, salts and acids",add:"Add an additive",aside:"Whatever goes in beside fats, lye, fragrance and colour.",row:RT},{list:"fragrances",title:"Fragrances",add:"Add a fragrance",aside:"Essential and fragrance oils.",row:ST},{list:"colours",title:"Colours",add:"Add a colour",aside:"Micas, pigments and other colours. Those of layers stand in the run.",row:AT}];function Gd(e){return yT.map(t=>{let n={of:e,at:`/${t.list}`},o=k(n),i=(r,l)=>s`<li class="formula-row" id=${C(n,l)}>
        ${kT(e,t,n,r,l)} ${t.row(e,`${n.at}/${l}`,r)}
      </li>`;return s`<section class="card" aria-labelledby="${t.list}-title">
      <h2 id="${t.list}-title">${t.title}</h2>
      ${o.length?s`<ol class="formula-rows">
              ${o.map(i)}
            </ol>`:s`<p class="aside">${t.aside}</p>`}
      ${G(n,t.add,()=>N(n,vT(t),t.add.replace("Add ","")))}
    </section>`})}function vT(e){return e.list==="liquids"?{name:"",goes_into:"",composition:""}:{name:"",rate:""}}function kT(e,t,n,o,i){let r=`/${t.list}/${i}`,l=ve(e,r),d=String(o.name||`number ${i+1} of the ${t.list}`);return s`${l?s`<p class="complaint">${l}</p>`:u}
    <div class="row named">
      ${f({label:"Name",of:e,at:`${r}/name`})}
      ${t.list==="liquids"?u:La(e,`${r}/rate`,"How much",Ca)}
      ${U(n,i,d)}
    </div>`}function y_(e,t,n,o){let i=`${t}/goes_into`,r=g(e,i);return T({of:e,question:"Goes into",at:i,chosen:r||void 0,answers:n,puts:p=>p,hint:o||r?void 0:"The batter, unless you name another place.",optional:!o})}function v_(e,t,n){let o=g(e,`${t}/stirred_in`);return s`${y_(e,t,TT,n)}
  ${g(e,`${t}/goes_into`)==="lye"||o!==void 0?T({of:e,question:"Stirred into the lye",at:`${t}/stirred_in`,chosen:String(o??""),answers:xT,puts:i=>i||void 0,hint:o===void 0?"Before the alkali; sodium lactate once the lye has cooled.":void 0}):u}`}var xT=[["","As usual"],["before the alkali","Before the alkali"],["once the lye has cooled","Once the lye has cooled"]],TT=[["lye","The lye"],["fats","The fats"],["batter","The batter"]];function Yd(e,t,n){let o=(l,d,c)=>l?`${d}${String(l)}${c}`:"",i=[o(n.bulk_density,""," in the spoon"),o(n.density,""," in the batter"),o(n.limit,"at most ","")].filter(Boolean).join(", "),r=["bulk_density","density","limit"].map(l=>`${t}/${l}`);return D({of:e,name:`${t} densities`,pointers:r,summary:`Densities and limit${i&&`: ${i}`}`,body:()=>s` <div class="row">
          ${f({label:"Bulk density (for spoons)",of:e,at:`${t}/bulk_density`,unit:"g/ml",optional:!0,hint:"A level cup weighed, by the cup's volume. Needed for spoons."})}
          ${f({label:"True density (in the batter)",of:e,at:`${t}/density`,unit:"g/ml",optional:!0,hint:"Once it is in the batter. Left out, water's is taken, and that is said."})}
        </div>
        ${La(e,`${t}/limit`,"The most that the supplier's document allows",h_,!0)}`})}function Zd(e,t,n,o){let i=(l,d)=>l===void 0?"":l==="none"?`no ${d}`:d,r=[i(n.contains_fat,"fat"),o?i(n.contains_acid,"acid"):""].filter(Boolean).join(", ");return D({of:e,name:`${t} holds`,pointers:[`${t}/contains_fat`,`${t}/contains_acid`],summary:`${o?"Fat or acid":"Fat"} in it${r&&`: ${r}`}`,body:()=>s`${m_(e,t)} ${o?qd(e,t):u}`})}var Ea=(e,t,n)=>to(e,t,String(n.name||"it"));function RT(e,t,n){return s`${v_(e,t,!0)}
    <div class="folds">${Zd(e,t,n,!0)} ${Yd(e,t,n)} ${Ea(e,t,n)}</div>`}function k_(e,t,n){return D({of:e,name:`${t} place`,pointers:[`${t}/goes_into`,`${t}/stirred_in`],summary:`Goes into the ${String(n.goes_into??"batter")}`,body:()=>v_(e,t,!1)})}function ST(e,t,n){return s`<div class="folds">
    ${Yd(e,t,n)} ${Ea(e,t,n)} ${k_(e,t,n)} ${Zd(e,t,n,!1)}
  </div>`}function AT(e,t,n){return s`${PT(e,t)}
    <div class="folds">
      ${Yd(e,t,n)} ${Ea(e,t,n)} ${k_(e,t,n)} ${Zd(e,t,n,!0)}
    </div>`}var DT=[["formula","taken out of the formula's"],["extra","put on top, and counted as fat"]];function PT(e,t){let n=`${t}/dispersed_in`,o=g(e,n)!==void 0,i=g(e,`${n}/from`);return s`${T({of:e,question:"Stirred into oil first",at:n,chosen:o?"oil":"dry",answers:[["dry","No"],["oil","Yes"]],puts:l=>l==="oil"?{fat:"",oil_per_colour:""}:void 0})}
  ${o?s`<div class="row">
            ${$e({label:"Which oil",of:e,at:`${n}/fat`,answers:Fa(e),unsaid:"choose ..."})}
            ${f({label:"Oil for 1 g of colour",of:e,at:`${n}/oil_per_colour`,number:!0,unit:"g",hint:"Or as you measure it: 1 tsp in 1 tbsp of oil."})}
          </div>
          ${T({of:e,question:"That oil is",at:`${n}/from`,chosen:i,answers:DT,puts:l=>l,optional:!0,hint:i?void 0:"Taken out of the formula's own, unless you say so."})}`:u}`}var OT=["coconut milk, canned","goat milk","cow's milk, whole","cream, heavy","milk, evaporated","carrot, pur\xE9ed raw","cucumber, pur\xE9ed with its skin","pumpkin, canned pur\xE9e","avocado, pur\xE9ed","brine, saturated at 20 \xB0C"];function MT(e,t,n){let o=(i,r,l)=>D({of:e,name:`${t}/${i}`,pointers:[`${t}/${i}`],summary:r,body:l});return s`${FT(e,t,n)}
    ${y_(e,t,[["lye","The lye"],["batter","The batter"]],!0)}
    ${LT(e,t)}
    <div class="folds">
      ${o("frozen",n.frozen===!0?"Goes in as ice":"Frozen: no",()=>BT(e,`${t}/frozen`))}
      ${o("acid",`Acid in it${n.contains_acid===void 0?"":n.contains_acid==="none"?": none":": some"}`,()=>qd(e,t))}
      ${o("density",`Density${n.density?`: ${String(n.density)}`:""}`,()=>f({label:"Density",of:e,at:`${t}/density`,unit:"g/ml",optional:!0,hint:"Left out, it is worked out from what is in it."}))}
      ${Ea(e,t,n)}
    </div>`}function BT(e,t){let n=g(e,t)===!0?"ice":"liquid";return T({of:e,question:"Goes in as ice, which keeps the lye cooler",at:t,chosen:n,answers:[["liquid","No"],["ice","Yes"]],puts:i=>i==="ice"?!0:void 0})}function FT(e,t,n){let o=n.replaces!==void 0?"replaces":n.rate!==void 0?"rate":void 0,i=r=>({...fe(e,t,["replaces","rate"]),[r]:""});return s`${T({of:e,question:"How much",at:t,asked_at:`${t}/replaces`,is_told_elsewhere:o!==void 0,chosen:o,answers:CT,puts:i})}
  ${o==="replaces"?s`<div class="row">
          ${f({label:"Of the formula's water",of:e,at:`${t}/replaces`,unit:"% of water",hint:"Its own water stands in for that share."})}
        </div>`:u}
  ${o==="rate"?La(e,`${t}/rate`,"Rate",Ca):u}`}var CT=[["replaces","In place of so much water"],["rate","By the fats or the batter"]];function LT(e,t){let n=`${t}/composition`,o=typeof g(e,n)=="object",i={water:"",sugar:"",salt:"",source:""},r=(d,c)=>f({label:d,of:e,at:`${n}/${c}`,unit:"%",short:!0});return s`${T({of:e,question:"What 100 g of it holds",at:n,is_told_elsewhere:!o,chosen:o?"label":"shipped",answers:[["shipped","Built-in figures"],["label","The label's figures"]],puts:d=>d==="label"?i:""})}
  ${o?s`<div class="row">${r("Water","water")} ${r("Sugar","sugar")} ${r("Salt","salt")}</div>
          ${Hd(e,`${n}/fat`,[["none","None"],["some","Holds fat"]],[["milk_fat","Milk fat"],...Fa(e)])}
          <div class="row">
            ${f({label:"Where the figures are from",of:e,at:`${n}/source`,hint:"Such as: the tin's label."})}
          </div>`:s`<div class="row">
          ${$e({label:"Built-in figures of",of:e,at:n,answers:OT.map(d=>[d,d]),unsaid:"choose ..."})}
        </div>`}`}var Br=()=>Object.keys(g("studio","/cups")??{}),Fr=()=>Br().length===1?{net:""}:Br().length?{cup:"",net:""}:{holds:"",net:""},x_="\0another";function Cr(e,t="Cup holds"){let n=`${e}/holds`,o=Br();if(g("run",n)!==void 0||!o.length)return s`${f({label:t,at:n,unit:"ml",short:!0})}${o.length?IT(e):u}`;let i=l=>l===x_?E("run","Another cup",e,{...Xd(e),holds:""},ne("run",n)):E("run",`Cup: ${l}`,e,{...Xd(e),cup:l}),r=l=>A("studio",`/cups/${W(l)}`);return $e({label:"Which cup",at:`${e}/cup`,answers:[...o.map(l=>[l,`${l}, ${r(l)}`]),[x_,"Another cup"]],unsaid:"choose ...",chosen:A("run",`${e}/cup`)||(o.length===1?o[0]:""),take:i})}function Xd(e){let{cup:t,holds:n,...o}=g("run",e)??{};return o}var IT=e=>s`<button type="button" @click=${()=>E("run","A cup of the studio",e,Xd(e))}>
    A cup of my studio
  </button>`;function R_(){return se()?s`<div class="row">
    ${Br().map(e=>f({of:"studio",label:`${e} holds`,at:`/cups/${W(e)}`,unit:"ml",short:!0,optional:!0}))}
    ${WT()}
  </div>`:s`<p class="hint">Each reading says what its cup holds, as long as there is no studio.</p>`}function WT(){let e=()=>{let t=document.getElementById("new-cup"),n=t.value.trim()||T_();t.value="",E("studio",`${n} added`,`/cups/${W(n)}`,"",ne("studio",`/cups/${W(n)}`))};return s`<div class="field short">
      <label for="new-cup">Another weigh-cup, its name</label>
      <input id="new-cup" autocomplete="off" spellcheck="false" placeholder=${T_()} />
    </div>
    <button type="button" @click=${e}>Add the cup</button>`}function T_(){for(let e=1;;++e){let t=e===1?"weigh-cup":`weigh-cup ${e}`;if(!Br().includes(t))return t}}var ET=["ice bath","cold water","fridge","room"].map(e=>[e,e==="room"?"the room":e]),ec=e=>({run:`/${e}/temperatures`,studio:`/temperatures/${e}`});function Na(e){let{run:t}=ec(e);return D({name:t,pointers:[t],summary:"How warm",body:()=>s` <p class="hint">
          ${se()?"Your studio says what is usual. ":""}What you leave blank is left out.
        </p>
        ${eo("How warm",[ec(e)])} ${I("run",t)} ${NT(e)}`})}function NT(e){let{run:t,studio:n}=ec(e),o=d=>({run:`${t}/${d}`,studio:`${n}/${d}`}),i=a.units==="us"?"\xB0F":"\xB0C",r=(d,c,p=i)=>Pe(o(d),{label:c,unit:p,optional:!0,takes_part:!0,short:!0}),l=o("cooled_in");return s`<div class="row">
    ${r("room_at","Room and dry alkali")} ${r("water_at","Water")}
    ${r("ice_share","Of the water, as ice","%")} ${r("lye_used_at","Lye when it is used")}
    ${r("fats_at","Fats")} ${r("batter_below","Batter must stay below")}
    ${$e({label:"The lye cools in",...Tr(l),answers:ET,unsaid:"not given",optional:!0})}
  </div>`}var ut=()=>$(a.run.now,"/pipe")!==void 0;function S_(){let e=t=>{let n=P(t,"/pipe",{formula:"",fills_headspace:"",whip:Fr()});return se()?n:P(n,"/losses/pipe",{bag:"",bowl_and_whisk:""})};le("set-up pipe"),lt("run","Topping added",e,L("lane-pipe"))}function jT(e){let t=Object.keys($(e,"/batch")??{}).length===1;return["/pipe","/losses/pipe","/lye_pot",$(e,"/batch/whippings")!==void 0&&t?"/batch":"/batch/whippings"].reduce((o,i)=>$(o,i)===void 0?o:P(o,i,void 0),e)}function HT(){lt("run","Topping removed",jT,L("topping-back"))}function A_(){let e=a.past.at(-1)?.run?.now;return!e||$(e,"/pipe")===void 0||ut()?u:s`<button type="button" id="topping-back" @click=${sr}>Bring the topping back</button>`}function tc(){return s`${QT()} ${Na("pipe")}
    <p class="choice"><button type="button" @click=${HT}>Take the topping away</button></p>`}var qT=["trials","beads","envelope"];function nc(e){return qT.every(t=>g("run",`/pipe/${t}`)===void 0)&&at("run","/pipe",`${J("run","/pipe/trials")}-add`,"How large the topping is"),s`<h3>How large is the topping?</h3>
    ${I("run","/pipe")}
    <p class="hint">
      Weighed trials are used first, then beads, then the outline; the others are shown for comparison.
    </p>
    <div class="items">
      ${Je({at:"/pipe/trials",name:"the trials",title:"Trials piped on paper",add:"Weigh trials piped on paper",blank:{weighed:[""],weigh_cup:Fr()},body:UT})}
      ${Je({at:"/pipe/envelope",name:"the outline",title:"Its outline",add:"Measure its outline",blank:{form:"",diameter:"",height:"",soap_share:""},body:zT})}
    </div>
    ${Je({at:"/pipe/beads",name:"the beads",title:"Beads from a tip",add:"Calculate it from the tip and its moves",blank:Wg,body:()=>Eg(e)})}
    ${e?KT(e):u}`}function UT(){let e={at:"/pipe/trials/weighed",least:1};return s`<div class="trials">
      ${k(e).map((t,n)=>s`<div class="row" id=${C(e,n)}>
            ${f({label:`Trial ${n+1}`,at:`${e.at}/${n}`,unit:"g",short:!0})}
            ${U(e,n,`trial ${n+1}`)}
          </div>`)}
    </div>
    ${G(e,"One more trial",()=>N(e,"","trial"))}
    <div class="row">
      ${f({label:"Weigh-cup of the trials, net",at:"/pipe/trials/weigh_cup/net",unit:"g"})}
      ${Cr("/pipe/trials/weigh_cup")}
    </div>
    ${I("run","/pipe/trials/weigh_cup")}`}function zT(){let e="/pipe/envelope",t=g("run",`${e}/form`);return s`${T({question:"Form of the outline",at:`${e}/form`,chosen:t,answers:[["cone","Cone"],["dome","Dome"]],puts:n=>n})}
    <div class="row">
      ${f({label:"Diameter",at:`${e}/diameter`,unit:"mm",short:!0})}
      ${f({label:"Height",at:`${e}/height`,unit:"mm",short:!0})}
      ${f({label:"Share that is soap, not air",at:`${e}/soap_share`,unit:"%",short:!0,hint:"Topping, not air between its ridges."})}
    </div>`}var JT={trials:"By weighed trials",beads:"By beads",envelope:"By its outline"};function KT(e){let t=e.visible_by;if(!t)return u;let n=["trials","beads","envelope"].map(i=>({way:i,ml:t[`${i}_ml`]})).filter(i=>typeof i.ml=="number"),o=i=>n.length<2?void 0:i===0?"this one counts":"for comparison";return s`<h4>${n.length<2?"Visible topping":"The ways compared, visible shape alone"}</h4>
    ${n.map(({way:i,ml:r},l)=>F({key:`pipe.by.${i}`,label:JT[i],note:o(l),shown:De(a.units,r),of:`pipe.visible_by.${i}_ml`}))}
    ${VT(e)}`}function VT(e){let t=e.visible_by?.suggested_correction;if(!t||a.is_old)return u;let n=R(t.correction,2),o="/pipe/beads/tip/hand",i=typeof g("run","/pipe/beads/tip")=="object",r=i&&$(a.run.now,`${o}/correction`)!==t.correction,l=()=>E("run","correction kept",o,{correction:t.correction,trials:t.trials});return s`<p>
      Your hand lays down ${n} times the computed beads (${t.trials}
      ${t.trials===1?"trial":"trials"}): keep that as the tip's hand
      factor${i?"":", in your file of tips or by measuring the tip as your own"}.
    </p>
    ${r?s`<button type="button" @click=${l}>Keep ${n} for my tip</button>`:u}`}function oc(e){return s`<h3>The whip planned for</h3>
    <div class="row">
      ${f({label:"Weigh-cup, net",at:"/pipe/whip/net",unit:"g",term:"weigh_cup"})}
      ${Cr("/pipe/whip")}
    </div>
    ${I("run","/pipe/whip")}
    ${e?.loads?s`<p class="aside of-plan">${e.loads} bag loads.</p>`:u}`}function QT(){let e="/pipe/pace",t=(n,o,i,r=!1)=>f({label:n,at:`${e}/${o}`,unit:i,optional:r,short:!0});return D({name:"pace",pointers:[e],summary:"Piping speed",body:()=>Je({at:e,name:"the pace",title:"The pace",add:"Add your piping speed",blank:{open_time:"",time_per_piece:""},body:()=>s`<div class="row">
            ${t("Can be piped for","open_time","min")} ${t("To pipe one","time_per_piece","s")}
            ${t("To change the bag","time_per_bag_change","s",!0)}
          </div>`})})}function GT(e,{at:t,figure:n}){let o=$(e,t),i=Array.isArray(o)?o:typeof o=="string"?[o]:[];return i.length?[...i,n]:n}function Lr(e,t,n){return t?s`<button type="button" @click=${()=>n(t.at,GT(e,t))}>It is really so: keep it</button>`:u}var rc=500,YT=()=>$(a.run.now,"/cut")===void 0&&ZT()>=rc,ZT=()=>a.plan?.pour.brimful_ml??a.measured?.gauge.pockets[0]?.brimful_ml??0,ja={run:"/cut/kerf",studio:"/kerf"};function D_(e){le("set-up cut"),E("run","Cut","/cut",{bar:ic[e],...se()?{}:{kerf:""}},ne("run",`/cut/bar/${Object.keys(ic[e])[0]}`))}function XT(){E("run","Left whole","/cut",void 0,L("cut-into-bars"))}function P_(){return YT()?s`<button type="button" id="cut-into-bars" @click=${()=>D_("loaf")}>Cut it into slices</button>
    <button type="button" @click=${()=>D_("slab")}>Cut it into bars</button>`:u}var ic={loaf:{thickness:""},slab:{length:"",width:""}};function eR(){let e=g("run","/cut/bar")??{};return"thickness"in e?"loaf":"length"in e||"width"in e?"slab":void 0}var tR={loaf:[["","Along the longer side"],["x","Along x, across the drawing"],["y","Along y, away from you"],["z","Upwards: rounds off a column"]],slab:[["","Whichever gives more bars"],["x","Along x, across the drawing"],["y","Along y, away from you"]]};function O_(){let e=eR(),t=(o,i)=>f({label:o,at:`/cut/${i}`,unit:"mm",short:!0,optional:!0}),n=A("run","/cut/along");return s` ${T({question:"What is cut?",at:"/cut/bar",chosen:e,answers:[["loaf","A loaf, into slices"],["slab","A slab, into bars"]],puts:o=>ic[o]})}
    <div class="row">
      ${e==="loaf"?f({label:"Bar, thickness",at:"/cut/bar/thickness",unit:"mm",short:!0}):u}
      ${e==="slab"?["length","width"].map(o=>f({label:`Bar, ${o}`,at:`/cut/bar/${o}`,unit:"mm",short:!0})):u}
      ${Pe(ja,{label:"Kerf of each cut",unit:"mm",short:!0,term:"kerf"})}
      ${t("Off each end","end_trim")} ${t("Off each side","side_trim")}
      ${t("Planed off the top","top_planing")}
      ${t(e==="slab"?"Planed off each side of a bar":"Planed off both faces","face_planing")}
    </div>
    <p class="hint">The kerf of a wire is 0 mm. ${eo("Kerf",[ja])}</p>
    ${e?T({question:e==="loaf"?"Slices are cut along":"Bars lie along",at:"/cut/along",chosen:n,answers:tR[e],puts:o=>o||void 0}):u}
    <button type="button" @click=${XT}>Leave it whole</button>`}var Ha=e=>/^\s*0*[1-9]\d{0,8}\s*$/.test(e)?Number(e):void 0;function qa(e,t,n){return s`<div class="field short">
    <label for=${e} data-said="required">Pieces to sell</label>
    <input
      id=${e}
      aria-required="true"
      .value=${M(t)}
      @input=${o=>n(o.target.value)}
      autocomplete="off"
      spellcheck="false"
      inputmode="numeric"
    />
  </div>`}function nR({outline:e,above:t}){let n=Math.max(4,(e.right-e.left)*.06),o=t.flat().map(([,m])=>m),[i,r]=o.length?[Math.min(...o),Math.max(...o)]:[0,0],l=-e.brim-2*n+i,d=l-r-n,c=[e.left-n,d,e.right-e.left+2*n,-e.floor+n-d],p=(m,_)=>S`<path class="shaded pour" fill-rule="evenodd" d=${_} /><path class="wall ${m}" fill-rule="evenodd" d=${_} />`;return s`<div class="drawing tall">
    <svg
      viewBox=${c.join(" ")}
      role="img"
      aria-label="The cavity from above and, beneath it, cut through its middle and seen from the side, to one scale"
    >
      ${p("above",ur(t,l))}${p("side",ur(e.loops))}
    </svg>
  </div>`}function xi(e,t=!1,n=[]){let o=n.length?s`<p class="hint" role="status">Still needed: ${n.join(", ")}.</p>`:u;if(!e)return s`<p class="hint">The drawing and the volume stand here as soon as every measure is in.</p>
      ${o}`;let{gauge:i}=e,r=i.pockets[0];return s`${nR(e)}
    <p class="order ${t?"old":""}" role="status">
      Holds
      <b>${O(De(a.units,r.brimful_ml))}</b>${i.pockets.length>1?s` in each of ${i.pockets.length}, ${O(De(a.units,i.total_ml))} together`:u},
      ${O(Se(a.units,r.brim_mm-r.floor_mm))} deep.
    </p>
    ${o}
    ${(i.measurements?.length??0)>1?s`<p class="aside">
            ${i.measurements.map(l=>`By ${l.by} ${O(De(a.units,l.brimful_ml))}`).join("; ")}.
          </p>`:u}
    ${i.notes.length?s`<ul class="limits">
            ${i.notes.map(l=>s`<li>${l.text}</li>`)}
          </ul>`:u}`}var oR={mm:"in",g:"oz","\xB0C":"\xB0F"},iR={mm:/^(mm|cm|m|in|inch|inches|ft|"|″|”)$/,g:/^(mg|g|kg|oz|lb|lbs)$/,"\xB0C":/^(°?C|°?F)$/,"\xB0":/^(°|deg|degrees?)$/,h:/^(min|h|hours?|d|days?)$/};function Ua(e,t,n=""){let o=sc(e);if(o)return o.unit??"";let i=$t($(q(),e));return iR[t]?.test(i)?i:n||(a.units==="us"?oR[t]??t:t)}var za=()=>h({typed:void 0}),Ti=e=>`d${e.replaceAll("/","-")}`,sc=e=>a.typed?.key===Ti(e)?a.typed:void 0,Ja=e=>sc(e)?.text??String($(q(),e)??"");function no(e){let{complaint:t}=ie();return t&&(t.field===e||t.field.startsWith(`${e}/`))?t.line:void 0}function ac(e,t,n,o){let{pointer:i}=e,r=l=>{let d=l.target.value,c=e.unit?Ua(i,e.unit,e.unit_before):"";h({typed:{key:Ti(i),text:d,unit:c}}),xe(i,rR(e,d,c))};return s`<input
    id=${Ti(i)}
    .value=${M(Ja(i))}
    @input=${r}
    @blur=${za}
    @keydown=${n??u}
    autocomplete="off"
    spellcheck="false"
    inputmode=${e.count?"numeric":"text"}
    aria-label=${o??u}
    aria-describedby=${t??u}
    aria-invalid=${no(i)?"true":"false"}
  />`}function rR(e,t,n){if(!((e.optional||e.count)&&!t.trim()))return e.count&&/^\s*\d{1,6}\s*$/.test(t)?Number(t):n&&Ue(t)?`${t.trim()} ${n}`:t}function dt(e,t){let n=Ti(e.pointer),o=no(e.pointer),i=sR(e.pointer)??e.hint,r=e.unit?` (${Ua(e.pointer,e.unit,e.unit_before)})`:"";return s`<div class="field ${e.wide?"wide":"short"} ${o?"wants":""}">
    <label for=${n}>${e.label}${r}</label> ${ac(e,o||i?`${n}-said`:void 0,t)}
    ${ge(n,o,i)}
  </div>`}function sR(e){let t=$(q(),e),n=sc(e);if(!(!n?.text.includes("/")||typeof t!="string"||t===n.text))return`taken as ${t}`}function Ka(e){let t=e.toLowerCase(),{file:n,shipped:o}=ie().open,i=o?"":n;return a.files?.moulds.find(r=>r.file!==i&&r.name.trim().toLowerCase()===t)?.file}async function Ir(e){let{open:t}=ie();try{if(await Gt(t),t.theirs)return void requestAnimationFrame(()=>window.scrollTo(0,0));h({files:await hs()})}catch(n){if(!(n instanceof y))throw n;return md(n)}a.run.file&&(Ft(),ce()),e(t.file)}var Rn="/shape/points",M_=500,oo=(e,t)=>[Rn,e,...t?[t]:[]].join("/"),B_=e=>Array.from({length:e.least},()=>({}));function F_(e){let t=nt(q(),Rn),n=lR(),{complaint:o}=ie(),i=o?.field===Rn&&!o.about?o.line:void 0;return s`<h3 id="points-title">Points</h3>
    <p class="hint">${e.words}</p>
    <div class="points" role="group" aria-labelledby="points-title">
      <div class="point head" aria-hidden="true">
        <span></span>${e.columns.map(r=>s`<span
              >${r.label} (${Ua(oo(-1,r.name),r.unit,C_(e,t.length,r.name))})</span
            >`)}
      </div>
      ${t.map((r,l)=>aR(e,l,n))}
    </div>
    ${i?s`<p class="complaint">${i}</p>`:u}
    <button type="button" ?disabled=${t.length>=M_} @click=${()=>Qa(e,t.length)}>Add a point</button>
    <p class="hint">
      Enter goes on, and adds a point after the last; Shift with Enter puts one in between; Backspace in an empty one
      takes it away.
    </p>`}function aR(e,t,n){let o=n.has(t)?`point ${n.get(t)}`:"empty point",i=uR(t),r=l=>{let{name:d,label:c,unit:p}=e.columns[l],m={label:c,pointer:oo(t,d),unit:p,unit_before:C_(e,t,d)},_=`${c}, ${n.has(t)?o:`point ${t+1}`}`;return ac(m,i?`point-${t}-said`:void 0,dR(e,t,l),_)};return s`<div class="point ${i?"wants":""}">
    <span class="number">${n.get(t)??""}</span>${r(0)}${r(1)}
    <button type="button" tabindex="-1" aria-label="Put a point before ${o}" @click=${()=>Qa(e,t)}>
      +
    </button>
    <button type="button" tabindex="-1" aria-label="Take ${o} away" @click=${()=>L_(e,t)}>×</button>
    ${i?s`<p id="point-${t}-said" class="complaint">${i}</p>`:u}
  </div>`}function lR(){let e=[...Yi(q()),...As(q())].sort((t,n)=>t-n);return new Map(e.map((t,n)=>[t,n+1]))}function uR(e){let{complaint:t}=ie();return no(oo(e))??(t?.about===oo(e)?t.line:void 0)}function C_(e,t,n){let o=(i,r)=>$t($(q(),oo(i,r)));for(let i=t-1;i>=0;--i)if(o(i,n))return o(i,n);return e.columns.map(({name:i})=>o(t,i)).find(Boolean)??""}function Va(e,t){queueMicrotask(()=>document.getElementById(Ti(oo(e,t)))?.focus())}function Qa(e,t){let n=[...nt(q(),Rn)];n.length>=M_||(n.splice(t,0,{}),za(),xe(Rn,n),Va(t,e.columns[0].name))}function L_(e,t,n=0){let o=nt(q(),Rn).filter((i,r)=>r!==t);za(),xe(Rn,o.length?o:[{}]),Va(Math.max(0,Math.min(t-(n?1:0),o.length-1)),e.columns[n].name)}function dR(e,t,n){let[o,i]=e.columns.map(({name:r})=>r);return r=>{let l=!Ja(oo(t,o))&&!Ja(oo(t,i));if(r.key==="Enter"&&r.shiftKey)Qa(e,t+1);else if(r.key==="Enter"&&n===0)Va(t,i);else if(r.key==="Enter"&&t+1<nt(q(),Rn).length)Va(t+1,o);else if(r.key==="Enter")Qa(e,t+1);else if(r.key==="Backspace"&&l&&nt(q(),Rn).length>1)L_(e,t,t>0?1:0);else return;r.preventDefault()}}var lc={weighings:[""]},uc=/\.(3mf|gltf|glb)$/i;function Ga(e){let t=Bn(e);return t?{kind:e,points:B_(t)}:{kind:e}}var cR=()=>xe("/water",lc),un=e=>St(q(),e),Wr=()=>Gi(q());function I_(e){let{open:t,answer:n,is_old:o}=ie();return s`${sn(t,()=>{Ir(e)})} ${an(t)}
    ${t.shipped?u:vi(a.files?.moulds.find(i=>i.file===t.file))}
    ${un("shape")&&un("mesh")?s`<p class="hint">The mesh is measured; its measures are a check.</p>`:u}
    ${un("shape")?ue("Shape",Wr(),Object.entries(Vm),pR):u}
    <div class="beside ${Bn(Wr())?"rows":""}">
      <div>
        ${dc()} ${un("shape")?fR():u} ${un("mesh")?hR():u}
        ${cc()} ${un("water")?_R():u} ${bR()}
      </div>
      <div class="stays">${xi(n,o,E_())} ${wR(e)}</div>
    </div>`}function pR(e){let t={...ie().shapes,[Wr()]:q().shape};v(ie(),{shapes:t,answer:void 0}),xe("/shape",t[e]??Ga(e))}function mR(){let{shipped:e,file:t}=ie().open;return e?a.files?.moulds.find(n=>n.file===t)?.name??t:void 0}function dc(){let e=mR();return dt({label:"What you call it",pointer:"/name",wide:!0,hint:e?`${e} stays as it is in the catalogue; this becomes a mould of your own, under a name of its own.`:void 0})}function fR(){let e=Wr(),t=Bn(e);return s`${Vo(e).length?s`<div class="row">
          ${Vo(e).map(n=>dt({...n,pointer:`/shape/${n.name}`}))}
        </div>`:u}
  ${t?F_(t):u}`}function cc(e=iu(q())){return s`<div class="row">
      ${e?u:dt({label:"Cavities in one mould",pointer:"/cavities",count:!0})}
      ${dt({label:"Moulds you own",pointer:"/owned",count:!0,optional:!0})}
      ${dt({label:"Unmould after",pointer:"/unmould_after",unit:"h",optional:!0})}
    </div>
    ${dt({label:"Note",pointer:"/note",optional:!0,wide:!0})}`}var pc=[["cavity","What is filled, or the piece"],["body","The mould with its pockets"],["skin","The mould's inner surface"]],mc=[["","As it is"],["+z","+z"],["+y","+y"],["-z","-z"],["-y","-y"],["+x","+x"],["-x","-x"]];function hR(){let e=o=>String($(q(),`/mesh/${o}`)??""),t=(o,i,r)=>{let l=no(`/mesh/${i}`);return s`<h4>${o}</h4>
      ${ue(o,e(i),r,d=>xe(`/mesh/${i}`,d||void 0))}
      ${l?s`<p class="complaint">${l}</p>`:u}`},n=no("/mesh/file");return s`<h3>Its mesh <small>${e("file")}</small></h3>
    ${n?s`<p class="complaint">${n}</p>`:u}
    ${uc.test(e("file"))&&!e("unit")?u:t("Unit of the file's numbers","unit",["mm","cm","m","in"].map(o=>[o,o]))}
    ${t("What it shows","role",pc)} ${t("Which way is up","up",mc)}
    ${e("role")==="body"?gR():u}
    <div class="row">
      ${dt({label:"Hollows to fill, by number",pointer:"/mesh/cavity_size_number",count:!0,optional:!0,hint:"Only where they differ in size."})}
      ${dt({label:"Direction that points up, if the mesh is tilted",pointer:"/mesh/straight_up",optional:!0,hint:"x,y,z, such as 0.0523,0,0.9986"})}
    </div>`}function gR(){let e=$(q(),"/mesh/on_board")===!0?"yes":"no";return s`<h4>Open below, and stood on a board?</h4>
    ${ue("Stood on a board",e,[["no","No"],["yes","Yes, the board closes it"]],t=>xe("/mesh/on_board",t==="yes"?!0:void 0))}`}function _R(){let e=$(q(),"/water/filled_to"),t=e===void 0?void 0:e==="brim"?"brim":$(e,"/depth")!==void 0?"depth":"below_brim",n=r=>xe("/water/filled_to",r==="brim"?"brim":{[r]:""}),o=$(q(),"/water/weighed_in"),i=t===void 0||t==="brim"?no("/water/filled_to"):void 0;return s`<h3>Water weighed in it</h3>
    <p class="hint">
      The water alone, without the mould. It corrects the measures and cannot stand without them: it does not tell what
      a cavity holds to a pour line.
    </p>
    ${dt({label:"Temperature of the water",pointer:"/water/temperature",unit:"\xB0C"})}
    <h4>Filled to</h4>
    ${ue("Filled to",t,[["brim","The brim"],["depth","A depth"],["below_brim","Below the brim"]],n)}
    ${i?s`<p class="complaint">${i}</p>`:u}
    ${t==="depth"?dt({label:"Depth of the water",pointer:"/water/filled_to/depth",unit:"mm"}):u}
    ${t==="below_brim"?dt({label:"Water below the brim",pointer:"/water/filled_to/below_brim",unit:"mm"}):u}
    <h4>Weighed in</h4>
    ${ue("Weighed in",o===void 0?void 0:String(o),[["each cavity","One cavity"],["all cavities","The whole mould"]],r=>xe("/water/weighed_in",r))}
    <div class="row">
      ${nt(q(),"/water/weighings").map((r,l)=>dt({label:`Water, round ${l+1}`,pointer:`/water/weighings/${l}`,unit:"g"},$R(l)))}
    </div>
    ${ie().complaint?.field==="/water/weighings"?s`<p class="complaint">${ie().complaint.line}</p>`:u}
    <button type="button" @click=${W_}>One more round</button>`}function W_(){let e=nt(q(),"/water/weighings").length;xe(`/water/weighings/${e}`,""),queueMicrotask(()=>document.getElementById(`d-water-weighings-${e}`)?.focus())}var $R=e=>t=>{t.key==="Enter"&&(e+1===nt(q(),"/water/weighings").length?W_():document.getElementById(`d-water-weighings-${e+1}`)?.focus())};function bR(){let e=(t,n)=>s`<button type="button" @click=${n}>${t}</button>`;return s`<div class="choice">
    ${un("shape")?u:e("Add measures, as a check",()=>xe("/shape",Ga("block")))}
    ${un("shape")&&un("mesh")?e("Leave the measures out",()=>xe("/shape",void 0)):u}
    ${un("water")?e("Leave the water out",()=>xe("/water",void 0)):e("Add weighed water",cR)}
  </div>`}function E_(){let e=As(q()).length;return e?[...Zi(q()),e===1?"the other number of a point":`the other numbers of ${e} points`]:Zi(q())}function wR(e){let t=String(q().name??"").trim(),n=Ka(t),{open:o,answer:i,is_old:r,complaint:l}=ie(),d=i&&!r&&!l&&!E_().length&&t&&!n,c=o.shipped?"":o.file;return s`<button type="button" class="strong" ?disabled=${!d} @click=${()=>{Ir(e)}}>
      ${c?"Save the change":"Use this mould"}
    </button>
    ${c?s`<p class="aside">It stays in ${c}.</p>`:u}
    ${t?u:s`<p class="hint">Give it a name first.</p>`} ${fc(t,n)}
    ${l?s`<p class="alarm" role="status">${yR(l.field)}${l.line}</p>
            ${Lr(q(),l.keep,xe)}`:u}`}var fc=(e,t)=>t?s`<p class="complaint" role="status">
        Another mould is called ${e} already (${t}); give this one a name of its own.
      </p>`:u;function yR(e){let[,t]=/^\/shape\/points\/(\d+)/.exec(e)??[];if(t)return`Point ${Number(t)+1}: `;if(e==="/shape/points")return"";let n=Vo(Wr()).find(({name:r})=>e===`/shape/${r}`);if(n)return`${n.label}: `;let i=document.getElementById(`d${e.replaceAll("/","-")}`)?.labels?.[0]?.textContent?.trim();return i?`${i}: `:e?`${e.slice(1).replaceAll("/",", ").replaceAll("_"," ")}: `:""}var vR=200*2**20;async function N_(e){if(!e)return;let t={name:e.name,share:0,sizes:[],is_measuring:!1,questions:0};if(h({mesh:t}),xe("/name",e.name.replace(/\.\w+$/,"")),e.size>vR){let n=`${e.name} has ${Math.ceil(e.size/1048576)} MiB`;return v(t,{complaint:`${n}; 200 MiB is the most: export it with fewer facets`})}try{let n=await pm(e,o=>v(t,{share:o}));v(t,{share:1,upload:n.file}),await H_(t)}catch(n){v(t,{complaint:n instanceof y?n.message:String(n)})}}async function H_(e){let t=e.questions+1;v(e,{questions:t,is_measuring:!0,complaint:void 0,answer:void 0,inspection:void 0});let{upload:n,unit:o,role:i,up:r}=e;try{let l=await ui({file:n,unit:o,role:i,up:r});t===e.questions&&v(e,{answer:l,is_measuring:!1})}catch(l){if(!(l instanceof y))throw l;if(t!==e.questions)return;let d=o?e.sizes:RR(l.complaint),c=d.length&&!o?void 0:H(l.complaint);v(e,{sizes:d,complaint:c,is_measuring:!1})}}async function kR(e){let{questions:t,upload:n,unit:o,up:i}=e;try{let r=await am({file:n,unit:o,up:i});t===e.questions&&v(e,{inspection:r})}catch(r){if(!(r instanceof y))throw r;t===e.questions&&v(e,{complaint:H(r.complaint)})}}function xR(e){return e.inspection?s`<h4>Every defect of the mesh</h4>
    ${e.inspection.defects.length?s`<ul>
            ${e.inspection.defects.map(TR)}
          </ul>`:s`<p>None.</p>`}`:s`<button type="button" @click=${()=>{kR(e)}}>List every defect of the mesh</button>`}var TR=({text:e})=>s`<li>${e}</li>`;function RR({asks:e,choices:t=[]}){if(e!=="unit")return[];let n=o=>(o??[]).map(i=>R(i,2)).join(" \xD7 ");return t.flatMap(({unit:o,size:i})=>o?[[o,n(i)]]:[])}function hc(e,t){v(e,t),H_(e)}function q_(e,t){let n=l=>{let d=l.target;N_(d.files?.[0]),d.value=""},o=l=>{l.preventDefault(),N_(l.dataTransfer?.files[0])},[i,r]=a.files?.imports_meshes?["STL, OBJ, PLY, OFF, 3MF, glTF or GLB",".stl,.obj,.ply,.off,.3mf,.gltf,.glb"]:["STL, the binary kind (for others brimwright-import is missing beside the program)",".stl"];return s` <div class="drop" @dragover=${l=>l.preventDefault()} @drop=${o}>
      <label for="mesh-file">Drop a mesh file here, or choose one: ${i}</label>
      <input id="mesh-file" type="file" accept=${r} @change=${n} />
    </div>
    ${a.mesh?SR(a.mesh,e,t):u}`}function SR(e,t,n){let i=(e.sizes.length?e.sizes:[["mm",""],["cm",""],["in",""]]).map(([r,l])=>[r,l?`${r}: ${l} ${r}`:r]);return s` <h3>${e.name}</h3>
    ${e.share<1&&!e.complaint?s`<label for="sent">Sending, ${Math.round(100*e.share)} %</label
            ><progress id="sent" max="1" .value=${e.share}></progress>`:u}
    ${e.is_measuring?s`<p role="status">Measuring ...</p>`:u}
    ${e.upload&&!uc.test(e.name)?s`<h4 id="unit-title">${e.unit?"Its unit":"Which size is it?"}</h4>
            ${ue("Unit of the file's numbers",e.unit,i,r=>hc(e,{unit:r}))}`:u}
    ${e.complaint?s`<p class="alarm" role="alert">${e.complaint}</p>`:u}
    ${e.upload&&!e.is_measuring&&(e.complaint||e.answer)?xR(e):u}
    ${e.upload&&(e.unit||e.answer)?s`<h4>What it shows</h4>
            ${ue("Role",e.role??e.answer?.gauge.role,pc,r=>hc(e,{role:r}))}
            <h4>Which way is up</h4>
            ${ue("Up",e.up??"",mc,r=>hc(e,{up:r||void 0}))}`:u}
    ${e.answer?s`${xi(e.answer)} ${AR(e,t,n)}`:u}`}var U_=e=>e.answer.gauge.role!=="cavity"||e.answer.gauge.pockets.length>1;function AR(e,t,n){let o=String(q().name??"").trim(),i=Ka(o),r=o&&!i&&!e.is_keeping;return s`${dc()} ${cc(U_(e))} ${fc(o,i)}
    <div class="choice">
      <button type="button" class="strong" ?disabled=${!r} @click=${()=>j_(e,n,t)}>
        Use this mould
      </button>
      <button type="button" ?disabled=${e.is_keeping} @click=${()=>j_(e,n)}>More settings</button>
    </div>
    ${e.is_keeping?s`<p role="status">Keeping it ...</p>`:u}
    <p class="hint">More is: water weighed in it, measures as a check, a mesh that leans or stands on a board.</p>`}async function j_(e,t,n){v(e,{is_keeping:!0});try{let o=DR(e,await mm(e.upload,OR(e.name)));if(!n||e.answer.gauge.pockets.length>1&&!await PR(o))return t(o);mi(o,"mesh",ie().title),await Ir(n),v(e,{complaint:a.mould?.complaint?.line})}catch(o){v(e,{complaint:o instanceof y?o.message:String(o)})}v(e,{is_keeping:!1})}function DR(e,t){let n={file:t,role:e.answer.gauge.role};e.unit&&(n.unit=e.unit),e.up&&(n.up=e.up);let{cavities:o,...i}=q();return{...i,...U_(e)||o===void 0?{}:{cavities:o},mesh:n}}async function PR(e){try{return await On({file:"new.mould.json",mould:e}),!0}catch(t){if(t instanceof y&&t.status===422)return!1;throw t}}var OR=e=>Qo(e.replaceAll(/[^\w.-]+/g,"_"),a.files?.meshes??[]);var Ya={measures:"By its inside measures",mesh:"From a mesh file",water:"By measures and weighed water"},z_={schema:"brimwright.mould/2",name:"",cavities:1,owned:1};function J_(e){en();let t={...z_,shape:Ga("block")};e==="mesh"?mi(z_,"mesh",Ya[e]):mi(e==="water"?{...t,water:lc}:t,"form",Ya[e]),Xa()}async function K_(e,t){en(),await Qh(e,t),Xa()}async function Za(e){en(),await Gh(e),Xa()}function MR(e){mi(e,"form","More about this mould"),Xa()}function Xa(){requestAnimationFrame(()=>document.querySelector("#mould-form")?.focus())}function V_(e){if(!a.mould)return;let{way:t,title:n}=a.mould;return s`<section aria-labelledby="mould-form">
    <h2 id="mould-form" tabindex="-1">${n}</h2>
    ${t==="mesh"?q_(e,MR):I_(e)}
  </section>`}var gc=()=>h({chosen_mould:void 0});function Er(e,t){let n=a.files?.moulds.find(r=>r.file===e),o=a.catalogue.find(r=>r.path===e),i={file:e,name:n?.name||o?.name||e,note:n?.note??"",shipped:n?.shipped??!0,sell:"",slice:"",told:t};h({chosen_mould:i}),BR(i),requestAnimationFrame(()=>document.querySelector("#mould-title")?.focus())}async function BR(e){try{v(e,{answer:await ui({file:e.file})})}catch(t){v(e,{complaint:t instanceof y?t.message:String(t)})}}var FR=e=>a.files?.moulds.find(t=>t.file===e);function Q_(e,t){let n=()=>t(async()=>{await K_(e.file,e.shipped),gc()});return s`<section aria-labelledby="mould-title">
    <h2 id="mould-title" tabindex="-1">
      ${e.name} <small>${e.shipped?"built-in":`your own, ${e.file}`}</small>
    </h2>
    ${e.told?s`<p role="status">${e.told}</p>`:u} ${e.note?s`<p>${e.note}</p>`:u}
    ${Aa(FR(e.file))}
    ${e.complaint?s`<p class="alarm" role="alert">It cannot be measured: ${e.complaint}</p>`:u}
    <div class="beside">
      <div>
        ${e.answer?xi(e.answer):e.complaint?u:s`<p role="status">Measuring ...</p>`}
        <button type="button" @click=${n}>${e.shipped?"Change a copy of it":"Change it"}</button>
      </div>
      ${e.complaint?u:IR(e,t)}
    </div>
  </section>`}var G_=({answer:e})=>(e?.gauge.pockets[0]?.brimful_ml??0)>=rc;function CR(e){let t=G_(e)?e.slice.trim():"";return Ue(t)?`${t} mm`:t||void 0}var LR=e=>s`<div class="field short">
    <label for="mould-slice" data-said="mm">Thickness of a slice</label>
    <input
      id="mould-slice"
      .value=${M(e.slice)}
      @input=${t=>v(e,{slice:t.target.value})}
      autocomplete="off"
      spellcheck="false"
      aria-describedby="mould-slice-said"
    />
    <p class="hint" id="mould-slice-said">Left blank, it is not cut into slices.</p>
  </div>`;function IR(e,t){let n=Ha(e.sell),o=CR(e),i=r=>()=>t(()=>la({mould:e.file,name:e.name,formula:r,sell:n,slice:o}));return s`<div>
    <h3>Make a run with it: how many, and which base?</h3>
    <div class="row">
      ${qa("mould-sell",e.sell,r=>v(e,{sell:r}))}
      ${G_(e)?LR(e):u}
    </div>
    ${n?u:s`<p class="hint">A base can be chosen once you say how many.</p>`}
    <ul class="cards">
      ${(a.files?.formulas??[]).map(r=>s`<li>
            <button type="button" ?disabled=${!e.answer||!n} @click=${i(r.file)}>
              <b>${r.name}</b><span>${r.note||r.file}</span>
            </button>
          </li>`)}
    </ul>
  </div>`}function Nr(){let{view:e,run:t,order:n,formula_of:o,formulas:i,mould:r,chosen_mould:l}=a;if(e!=="reading")return mn(e)?{name:e,file:t.file,of:t}:e==="moulds"&&r?{name:"describing",file:r.open.id,of:r}:e==="moulds"&&l?{name:"chosen",file:l.file,of:l}:e==="order"?{name:e,file:n?.open.file,of:n}:e!=="formula"?{name:e}:o==="apart"?{name:"formula",file:i.apart?.file,of:i.apart}:{name:Ui[o],file:t.file,of:t}}async function Z_({name:e,file:t}){if(!(!(e===Ui.apart&&a.formulas.apart?.file===t)&&!await ua()))try{await WR(e,t)}catch(o){if(!(o instanceof y||o instanceof SyntaxError))throw o;h({view:"runs",list_complaint:o.message})}}async function WR(e,t=""){let n=e;if(mn(n))return Y_(t,n);let o=["pour","pipe"].find(i=>Ui[i]===e);if(o){await Y_(t,"formula"),a.view==="formula"&&Ye(o);return}if(e===Ui.apart)return br(t);if(e==="order")return wr(t);await ER(e,t)}async function Y_(e,t){e===a.run.file||!e?h({view:a.run.file?t:"runs",typed:void 0}):await Xt(e,t)}async function ER(e,t){let n=e;gc(),en(),h({view:ft(n)?n:"moulds",list_complaint:"",list_told:"",list_open:void 0,held_open:void 0,fault:void 0});let o=Ls(Qe).find(i=>i.id===t);e==="describing"&&o&&await Za(o),e==="chosen"&&Er(t),NR()}async function NR(){try{await _t(),ra()}catch(e){if(!(e instanceof y))throw e;h({list_complaint:e.message})}}var ct={id:""},je,_c=!1,bc=new Map,el=JSON.parse(sessionStorage.getItem("left")??"{}");function e$(){let e=Nr();_c||!e||je&&Kt(je)===Kt(e)||(tl(),t$(e))}function t$(e){let t=!je||je.name===e.name&&je.of!==void 0&&je.of===e.of;if(je=e,t)return Ri();ct={id:crypto.randomUUID(),before:location.hash},bc.set(ct.id,e.of),history.pushState(ct,"",Kt(e)),requestAnimationFrame(HR)}function Ri(){je&&(ct.id||(ct={id:crypto.randomUUID()}),bc.set(ct.id,je.of),history.replaceState(ct,"",Kt(je)))}var jR="button, input, select, summary, a[href], [tabindex]",$c=e=>e.id||(e.getAttribute("aria-label")??e.textContent).trim(),n$=e=>[...document.querySelectorAll(`#main :is(${jR})`)].filter(t=>$c(t)===e);function tl(){let e=document.activeElement;!e?.closest("#main")||e.id==="main"?el[ct.id]={scroll:scrollY}:el[ct.id]={scroll:scrollY,words:$c(e),nth:n$($c(e)).indexOf(e)}}function HR(){scrollTo(0,0),document.activeElement?.closest("#main")||o$()}function o$(){let e=document.querySelector("#main h1");e&&(e.tabIndex=-1,e.focus({preventScroll:!0}))}function i$(){let{scroll:e,words:t,nth:n=0}=el[ct.id]??{scroll:0},o=t===void 0?void 0:n$(t)[n];o?o.focus({preventScroll:!0}):o$(),scrollTo(0,e)}var pt=e=>r$({name:e,file:mn(e)?a.run.file:void 0});async function r$(e){tl(),await wc(e,()=>{let t=Nr();t&&!(je&&Kt(je)===Kt(t))&&t$(t)})}async function wc(e,t){_c=!0;try{await Z_(e)}finally{_c=!1,t()}}function s$(e){ct.before===Kt(e)?history.back():r$(e)}var X_=Promise.resolve();function qR(e,t){tl();let n=()=>history.state?.id!==e?.id;X_=X_.then(async()=>{if(!t)return Ri();if(n())return;let o=e?bc.get(e.id):void 0,i=[a.run,a.formulas.apart,a.order].find(r=>r&&r===o);await wc(i?{...t,file:"open"in i?i.open.file:i.file}:t,()=>{je=Nr(),!n()&&(ct=e??{id:crypto.randomUUID()},Ri(),requestAnimationFrame(i$))})})}function a$(){history.scrollRestoration="manual",addEventListener("popstate",e=>{Vp()||qR(e.state,Ul(location.hash))}),addEventListener("pagehide",()=>{tl(),sessionStorage.setItem("left",JSON.stringify(el))})}async function l$(){let e=Ul(location.hash);e&&(ct=history.state??{id:""}),await Hh(gm(e)),e&&UR(e)&&await wc(e,()=>{je=Nr(),Ri(),requestAnimationFrame(i$)}),await qh()}var UR=e=>!je||Kt(je)===Kt(e);function Si(e=a.plan?"The figures below are out of date.":"No figures yet."){let t=Wa()?void 0:a.complaint;return s`<div class="complaints" role="status">
      ${t?s`<p class="alarm">
                <strong>${e}</strong>
                ${Sn(t.field)}${H(t)}
              </p>
              ${t.is_fault?s`<button type="button" @click=${vc}>Ask again</button>`:u}
              ${yt("run")?Lr(a.run.now,t.keep,(n,o)=>Z("run",n,o)):yc(t)}
              ${zR()?s`<button type="button" @click=${kc}>Go to the field</button>`:u}`:u}
    </div>
    ${Mr()}`}function yc({keep:e}){let{studio:t}=a.beside;return t&&yt("studio")?Lr(t.now,e,(n,o)=>Z("studio",n,o)):u}function Sn(e){let t=e.split("/").slice(1).map(n=>/^\d+$/.test(n)?` ${Number(n)+1}`:`, ${n.replaceAll("_"," ")}`);return t.length?`${t.join("").slice(2)}: `:""}function vc(){ce(),a.run.failed&&Yt()}function zR(){if(u$())return!0;let e=nn();return e?document.activeElement!==e:JR()}var JR=()=>a.view!=="set-up"&&yt("run")&&a.complaint!==void 0&&a.complaint.field!=="",u$=()=>["pour","pipe"].find(e=>a.complaint?.file&&a.complaint.field&&yt(e));function kc(){let e=nn(),t=u$();if(e)return ze(e);t?Ye(t):pt("set-up"),KR(()=>ze(nn()))}function KR(e){requestAnimationFrame(()=>requestAnimationFrame(e))}var d$=()=>[...Fs().map(e=>sn(e)),...Bs().map(an)];function c$(){let e=a.formula_of,t=a.formulas[e];if(!t)return s`<h1 id="formula-title" tabindex="-1">Formula</h1>
      ${d$()}${Si()}
      <p>Reading the formula ...</p>
      ${Tc(e)}`;let n=a.plan&&yi(a.plan),o=e==="pipe"?n?.whippings[0]:n?.pour;return s`${d$()}
    <h1 id="formula-title" tabindex="-1">${String(t.now.name||"Unnamed formula")}</h1>
    <p class="aside">${VR(e)}</p>
    <div class="choice">${Tc(e)}${e==="apart"?QR():u}</div>
    ${vi(a.files?.formulas.find(i=>i.file===t.file))} ${GR(e,o,n)} ${m$(e)}
    ${Kd(e)} ${Vd(e,o)} ${Gd(e)} ${jd(e)}
    <div class="choice">${Tc(e)}</div>`}var p$=e=>[m$(e),Kd(e),Vd(e,void 0),Gd(e),jd(e)],xc=()=>String(a.run.now.name??a.run.file);function VR(e){let t=a.formulas[e],n=t.shipped?" Built-in: your first change is saved as a copy.":"",o=a.formulas.pour===t&&a.formulas.pipe===t;return e==="apart"?`Opened on its own; the figures are for a base of "${xc()}".${n}`:o?`Base and topping of "${xc()}" are both made of it.${n}`:`${e==="pour"?"Base":"Topping"} of "${xc()}".${n}`}function Tc(e){let t=e==="apart";return s`<button type="button" class="strong" @click=${()=>s$(t?{name:"formulas"}:{name:a.came_from,file:a.run.file})}>
    ${t?"Close the formula":"Back to the run"}
  </button>`}function QR(){return s`<button type="button" @click=${()=>{ad("pour")}}>Use it as the base</button> ${ut()?s`<button type="button" @click=${()=>{ad("pipe")}}>Use it as the topping</button>`:u}`}function GR(e,t,n){return s`<section class="strip" aria-label="What comes of it">
    ${t&&n?s`<dl>
            ${[...YR(e,n),...ZR(e,t)].map(([o,i,r])=>s`<div class=${a.is_old?"old":""}>
                  <dt>${o} ${r?Xn(r):u}</dt>
                  <dd><b>${i}</b></dd>
                </div>`)}
          </dl>`:u}
    ${XR(e)}
  </section>`}function YR(e,t){let n=e==="pipe"?Cd(t,t.whippings[0]):"";return n?[["For one whipping",n]]:Ne(t.whole)?[["For one batch",Nt(t.whole,t.batch)]]:[]}function ZR(e,t){let n=Gn(e).length?" \u26A0":"";return[["Fats",O(j(a.units,t.fats_g))],["Superfat as weighed",`${Ze(t.superfat_percent.effective)}${n}`,"superfat_as_weighed"],...Ba(t).map(({one:o})=>[o.name,O(Io(a.units,o))])]}function XR(e){let t=Wa()?void 0:a.complaint;if(!t)return s`<div role="status"></div>
      ${Mr()}`;let n=yt(e),o=n&&t.field!==""&&document.activeElement!==nn();return s`<div role="status" class="asks">
      <p class="alarm">
        <strong>${a.plan?"These figures are out of date.":"No figures yet."}</strong>
        ${n?"":"Not about this formula: "}${Sn(t.field)}${H(t)}
      </p>
      ${t.is_fault?s`<button type="button" @click=${vc}>Ask again</button>`:u}
      ${o?s`<button type="button" @click=${()=>nn()?.focus()}>Go to the field</button>`:u}
    </div>
    ${Mr()}`}function m$(e){return s`<section class="card" aria-label="Name">
    ${f({label:"Name",of:e,at:"/name",wide:!0})}
    ${D({of:e,name:"note",pointers:["/note"],summary:"Your note",body:()=>f({label:"Note",of:e,at:"/note",optional:!0,wide:!0})})}
  </section>`}var Rc=e=>v(a.new_formula,e);function f$(){let{name:e,copied:t}=a.new_formula,n=[...a.files?.formulas??[]].sort((i,r)=>Number(i.shipped)-Number(r.shipped)),o=i=>()=>de(async()=>{await i(e.trim()),Rc({name:"",copied:""})});return s`${kt("Formulas")}
    <section aria-label="Formulas">
      ${Ht(n,e0)}
      <h2>A new formula</h2>
      <div class="row">
        <div class="field">
          <label for="new-formula">What you call it</label>
          <input
            id="new-formula"
            .value=${M(e)}
            @input=${i=>Rc({name:i.target.value})}
            autocomplete="off"
            spellcheck="false"
          />
        </div>
        <button type="button" ?disabled=${!e.trim()} @click=${o(zh)}>Begin from blank</button>
      </div>
      <div class="row">
        <div class="field choose">
          <label for="copied-formula">Or as a copy of</label>
          <select
            id="copied-formula"
            @change=${i=>Rc({copied:i.target.value})}
          >
            <option value="" .selected=${M(t==="")}>choose ...</option>
            ${n.map(i=>s`<option value=${i.file} .selected=${M(i.file===t)}>${i.name||i.file}</option>`)}
          </select>
        </div>
        <button
          type="button"
          ?disabled=${!e.trim()||!t}
          @click=${o(i=>Jh(t,i))}
        >
          Make the copy
        </button>
      </div>
      ${e.trim()?"":s`<p class="hint">A new formula needs a name first.</p>`}
    </section>
    ${xt("formula")}`}function e0(e){let t=e.changed?[`changed ${oe(e.changed)}`]:[];return ln({kind:Go,one:e,facts:t,open:()=>br(e.file)})}function t0(e){en(),Er(e,`Saved in ${e}.`)}function h$(){let{chosen_mould:e}=a;return s`${kt("Moulds")}
  ${e?Q_(e,de):V_(t0)??s`${r0()} ${n0()}`}`}function n0(){let e=(a.files?.moulds??[]).filter(n=>!n.shipped),t=a.catalogue.map(n=>({file:n.path,name:n.name,note:"",shipped:!0}));return s`<section aria-labelledby="moulds-title">
    <h2 id="moulds-title">Moulds: start a run with one, or change it</h2>
    ${Ht([...e,...t],o0)} ${xt("mould")}
  </section>`}function o0(e){let t=e.shipped?i0(e.file):l0(e.file),n=()=>Promise.resolve(Er(e.file));return ln({kind:Qe,one:e,facts:t,picture:e.file,open:n})}var i0=e=>a.catalogue.filter(t=>t.path===e).map(t=>`${O(De(a.units,t.brimful_ml))}, ${V(t.cavities,"cavity","cavities")}; ${t.description}`);function r0(){return s`<section aria-labelledby="own-title">
    <h2 id="own-title">A new mould of your own</h2>
    ${s0()}
    <div class="choice">
      ${Object.entries(Ya).map(([e,t])=>s`<button type="button" @click=${()=>J_(e)}>${t}</button>`)}
    </div>
  </section>`}function s0(){return Ls(Qe).map(e=>{let t=String(we(e.text)?.name??"").trim()||a0(e)||"a mould without a name yet";return s`<div class="banner">
      <p>Your unsaved mould <b>${t}</b> is still here.</p>
      <div class="choice">
        <button type="button" @click=${()=>de(()=>Za(e))}>Continue</button>
        <button type="button" @click=${()=>{Cn(Qe,e.id),Q()}}>Discard it</button>
      </div>
    </div>`})}var a0=({file:e})=>a.files?.moulds.find(t=>t.file===e)?.name;function l0(e){let t=Rh(e);return t?"complaint"in t?[`it cannot be measured: ${t.complaint}`]:[O(De(a.units,t.brimful_ml)),V(t.cavities,"cavity","cavities")]:["measuring ..."]}var u0=300,d0=1e3;function nl(){let{quoted:e,plan:t,quote_wish:n,is_old:o}=a,i=e?.of===t&&e?.wish===n;!i&&!o&&c0();let r=i?e?.complaint:void 0;return{quote:e?.quote,complaint:r,is_old:o||!i||r!==void 0}}function Ac(){a.quoted&&h({quoted:{...a.quoted,of:void 0}})}var jr,Sc=!1;function c0(){let{plan:e,quote_wish:t}=a;Sc||jr?.of===e&&jr?.wish===t||(window.clearTimeout(jr?.timer),jr={of:e,wish:t,timer:window.setTimeout(()=>{m0()},a.quoted?u0:0)})}var ol=e=>e.split(/[\s,;]+|\band\b/).filter(Boolean).join(",");function g$(e,{numbers:t="",by:n,figure:o}){let i=ol(t);return{...e,...i&&{sell:i},...n&&o.trim()&&{[n]:o}}}var il=()=>g$({file:a.run.file,run:a.run.now},a.quote_wish);function p0(e,{numbers:t=""}){return e.field==="/sell"&&ol(t)?{...e,file:"",field:"sell"}:e}async function m0(){jr=void 0;let{run:e,plan:t,planned:n,quote_wish:o,is_old:i}=a;if(!(!t||!n||i)){Sc=!0;try{let r=await im(g$(n,o));e===a.run&&h({quoted:{of:t,wish:o,quote:r}})}catch(r){if(!(r instanceof y))throw r;if(e!==a.run)return;let l=p0(r.complaint,o);h({quoted:{of:t,wish:o,quote:a.quoted?.quote,complaint:l}}),r.may_pass&&window.setTimeout(Ac,d0)}finally{Sc=!1}}}var f0=300,h0=1e3,Pc=e=>{let{by:t,figure:n}=a.quote_wish;return[e.open.now,e.open.file,e.times,t,n,a.plan,To()]},_$=(e,t)=>e!==void 0&&e.every((n,o)=>n===t[o]);function $$(){let e=Ie(),{quoted:t}=e;if(!$n(e.open.now)||e.open.theirs)return{is_old:!0};let n=_$(t?.of,Pc(e));!n&&!a.is_old&&g0(e);let o=n?t?.complaint:void 0;return{quote:t?.quote,complaint:o,is_old:a.is_old||!n||o!==void 0}}function Oc(){let{quoted:e}=Ie();e&&v(Ie(),{quoted:{...e,of:[]}})}function Mc({open:e,times:t}){let{by:n,figure:o}=a.quote_wish,i=ol(t);return{file:e.file,order:e.now,...i&&{times:i},...n&&o.trim()&&{[n]:o}}}var rl,Dc=!1;function g0(e){let t=Pc(e);Dc||_$(rl?.of,t)||(window.clearTimeout(rl?.timer),rl={of:t,timer:window.setTimeout(()=>{_0(e)},e.quoted?f0:0)})}async function _0(e){if(rl=void 0,e===a.order){Dc=!0;try{if(await Zt(),await Pt(),await ei(),!$n(e.open.now))return;let t=Pc(e);await $0(e,t)}catch(t){if(!(t instanceof y))throw t}finally{Dc=!1,v(e,{})}}}async function $0(e,t){try{v(e,{quoted:{of:t,quote:await rm(Mc(e))}})}catch(n){if(!(n instanceof y))throw n;v(e,{quoted:{of:t,quote:e.quoted?.quote,complaint:n.complaint}}),n.may_pass&&window.setTimeout(()=>e===a.order&&Oc(),h0)}}var Ai={of:"order",at:"/lines",in_order:!0,stays:!0};function b$(){return s`<section class="card" aria-label="The order">
    <div class="row">
      ${f({of:"order",label:"For",at:"/for",optional:!0})}
      ${f({of:"order",label:"Due",at:"/due",date:!0,optional:!0,short:!0})}
      ${f({of:"order",label:"Note",at:"/note",optional:!0})}
    </div>
    <h2>What is ordered</h2>
    ${I("order","/lines")} ${k(Ai).map((e,t)=>b0(t))} ${w0()}
  </section>`}var w$=()=>(a.files?.runs??[]).filter(({shipped:e})=>!e);function y$(e){let t=gn(Ie().open.file,e);return a.files?.runs.find(n=>n.file===t)}var v$=e=>y$(e)?.name||e;function k$(e){let t=Wn(Ie().open.now).map(({run:n})=>n);return w$().filter(({file:n})=>n===e||!t.includes(n)).map(n=>[n.file,n.name||n.file])}function b0(e){let{run:t}=Wn(Ie().open.now)[e]??{run:""},n=`/lines/${e}`,o=y$(t)?.pieces,i=t?v$(t):`line ${e+1}`;return s`<div class="row" id=${C(Ai,e)} role="group" aria-label=${i}>
    ${$e({of:"order",label:"Run",at:`${n}/run`,answers:k$(t),unsaid:"choose ..."})}
    ${f({of:"order",label:"Pieces",at:`${n}/pieces`,count:!0,short:!0,hint:o===void 0?void 0:`The run itself: ${V(o,"piece")}`})}
    ${k(Ai).length>1?f({of:"order",label:"Poured with others",at:`${n}/together`,optional:!0,short:!0,hint:"Lines with one word, such as A, share one base."}):u}
    ${U(Ai,e,i)}
  </div>`}function w0(){let e=k$();return w$().length?e.length?s`<div class="row">
    ${$e({of:"order",label:k(Ai).length?"Another run":"The run that is ordered",at:"/lines/-",answers:e,unsaid:"choose ...",optional:!0,chosen:"",take:t=>t&&N(Ai,{run:t},v$(t))})}
  </div>`:s`${u}`:s`<p class="hint">
      An order is of runs of your own, and there is none yet: make one, or copy an example.
    </p>`}var y0=300,v0=1e3,x$=()=>new Date().toDateString(),k0=()=>({file:a.run.file,run:a.run.now});function x0(){let{run:e,plan:t}=a;return{known:a.run_days,rests_on:()=>[a.plan,x$()],is_ready:t!==void 0&&!a.is_old,written:()=>Promise.resolve(),question:()=>a.planned??k0(),is_open:()=>e===a.run,keep:n=>h({run_days:n})}}function T0(){let{order:e}=a;if(!e)return;let{open:t}=e;return{known:e.days,rests_on:()=>[t.now,t.file,a.plan,To(),x$()],is_ready:$n(t.now)&&!t.theirs&&!a.is_old,written:async()=>{await Zt(),await Pt(),await ei()},question:()=>({file:t.file,order:t.now}),is_open:()=>e===a.order,keep:n=>v(e,{days:n})}}var sl=e=>e==="run"?x0():T0(),T$=e=>sl(e).question(),R$=(e,t)=>e!==void 0&&e.length===t.length&&e.every((n,o)=>n===t[o]);function al(e){let t=sl(e);if(!t)return{is_old:!0};let{known:n,is_ready:o}=t,i=R$(n?.of,t.rests_on());!i&&o&&R0(e,t);let r=i?n?.complaint:void 0;return{days:n?.days,complaint:r,is_old:!o||!i||r!==void 0}}function Cc(e){let t=sl(e);t?.known&&t.keep({...t.known,of:[]})}var Bc=new Map,Fc=new Set;function R0(e,t){let n=t.rests_on(),o=Bc.get(e);Fc.has(e)||R$(o?.of,n)||(window.clearTimeout(o?.timer),Bc.set(e,{of:n,timer:window.setTimeout(()=>{S0(e)},t.known?y0:0)}))}async function S0(e){Bc.delete(e);let t=sl(e);if(t?.is_ready){Fc.add(e);try{await t.written(),await A0(e,t)}catch(n){if(!(n instanceof y))throw n}finally{Fc.delete(e),h({})}}}async function A0(e,{known:t,rests_on:n,question:o,is_open:i,keep:r}){let l=n();try{let d=await sm(o());i()&&r({of:l,days:d})}catch(d){if(!(d instanceof y))throw d;if(!i())return;r({of:l,days:t?.days,complaint:d.complaint}),d.may_pass&&window.setTimeout(()=>i()&&Cc(e),v0)}}var Nc=864e5,io=e=>Math.round(Date.parse(`${e}T00:00Z`)/Nc),S$=e=>new Date(e*Nc).toISOString().slice(0,10),D0=e=>new Date(e*Nc).getUTCDay()===1,Ic=40,Wc=18,P0=7,Ec=class{#n;#e;constructor({calendar:t}){this.#n=io(t[0].day),this.#e=t.length}at=(t,n=0)=>`${this.#t(io(t)+n)}%`;wide=t=>`${(100*t/this.#e).toFixed(3)}%`;#t=t=>(100*(t-this.#n)/this.#e).toFixed(3);mondays(){let t=Array.from({length:this.#e},(n,o)=>this.#n+o).filter(D0);return t.filter((n,o)=>o%Math.ceil(t.length/P0)===0).map(S$)}is_at_end=t=>io(t)-this.#n>.88*this.#e};function A$(e){let t=new Ec(e),{calendar:n}=e;return s`<figure class="day-strip">
    <p class="aside">${Te(n[0].day)} to ${Te(n.at(-1).day)}</p>
    ${Lc(e,t,20,F0(t))}
    <p>Hours of your making days</p>
    ${Lc(e,t,Ic+2,C0(e,t))}
    ${e.batches.map(o=>s`<p>${N0(e,o)}</p>
          ${Lc(e,t,Wc+6,L0(e,t,o))}`)}
    <figcaption>${H0(e)}</figcaption>
  </figure>`}var Lc=(e,t,n,o)=>s`<svg width="100%" height=${n} aria-hidden="true">
    ${S`${O0} ${B0(e,t)}
      ${t.mondays().map(i=>S`<line class="week" x1=${t.at(i)} x2=${t.at(i)} y1="0" y2="100%" />`)}
      ${o}
      ${M0(e).map(i=>S`<line class="due" x1=${t.at(i)} x2=${t.at(i)} y1="0" y2="100%" />`)}`}
  </svg>`,O0=S`<defs>
  <pattern id="day-mould" width="8" height="8" patternUnits="userSpaceOnUse"><path d="M0 0L8 8M8 0L0 8" /></pattern>
  <pattern id="day-cure" width="6" height="6" patternUnits="userSpaceOnUse"><circle cx="3" cy="3" r="1" /></pattern>
  <pattern id="day-off" width="7" height="7" patternUnits="userSpaceOnUse"><path d="M0 7L7 0" /></pattern>
</defs>`,M0=({days:e})=>e.filter(({acts:t})=>t.some(({act:n})=>n==="due")).map(({day:t})=>t),B0=({calendar:e},t)=>e.filter(({off:n})=>n).map(({day:n})=>S`<rect class="off" x=${t.at(n)} width=${t.wide(1)} height="100%" />`),F0=e=>e.mondays().filter(t=>!e.is_at_end(t)).map((t,n)=>S`<text class=${n%2?"between":""} x=${e.at(t)} dx="3" y="14">${wg(t)}</text>`);function C0({calendar:e},t){let n=Math.max(...e.map(({hours_min:i})=>i)),o=(i,r,l)=>{let d=Ic*l/n;return S`<rect class=${i} x=${t.at(r,.1)} width=${t.wide(.8)} y=${1+Ic-d} height=${d} />`};return e.filter(({hours_min:i})=>i>0).map(({day:i,hours_min:r,used_min:l})=>S`${o("free",i,r)} ${o("used",i,l)}`)}function L0(e,t,n){let{poured:o,unmoulded:i,cured:r}=n,l=(p,m,_)=>{let b=io(_)-io(m);return S`<rect class=${p} x=${t.at(m)} y="3" width=${t.wide(b)} height=${Wc} />`},d=o===i,c=(p,m)=>E0(e,p,n).map(_=>S`<circle class=${p} cx=${t.at(_,.5)} cy=${3+Wc/2} r=${m} />`);return S`${l("mould",o,d?S$(io(o)+1):i)}
    ${io(i)<io(r)?l("cure",i,r):u}
    ${c("chill",7)} ${c("cast",3.5)}`}var I0=({of:e,runs:t,batches:n},o)=>e===o.of&&t.join()===o.runs.join()&&n.includes(o.batch),W0=({lyes:e},t)=>e.filter(({batches:n})=>n.some(({of:o,runs:i,batch:r})=>o===t.of&&i.join()===t.runs.join()&&r===t.batch)).map(({made:n})=>n);function E0(e,t,n){let o=e.days.filter(({acts:i})=>i.some(r=>r.act===t&&I0(r,n)));return[...new Set([...o.map(({day:i})=>i),...t==="chill"?W0(e,n):[]])]}function N0({asked:e,batches:t},n){let o=({of:l,runs:d})=>l===n.of&&d.join()===n.runs.join(),i=e[n.of].lines.find(({runs:l})=>l.join()===n.runs.join())?.name??"",r=t.filter(o).length;return`${i}${r>1?`, batch ${n.batch} of ${r}`:""}: ${n.pieces} ${n.pieces===1?"piece":"pieces"}`}var j0=(e,t)=>s`<span><svg width="26" height="20" aria-hidden="true">${e}</svg> ${t}</span>`,Hr=e=>S`<rect class=${e} x="1" y="1" width="24" height="18" />`;function H0({calendar:e,days:t}){let n=i=>t.some(({acts:r})=>r.some(({act:l})=>l===i));return[[!0,Hr("used"),"hours used"],[!0,Hr("free"),"hours free"],[!0,Hr("mould"),"in the mould"],[!0,Hr("cure"),"curing"],[e.some(({off:i})=>i),Hr("off"),"day off"],[n("cast"),S`<circle class="cast" cx="13" cy="10" r="3.5" />`,"decorations cast"],[n("chill"),S`<circle class="chill" cx="13" cy="10" r="7" />`,"weighed out the evening before"],[!0,S`<line class="due" x1="13" x2="13" y1="0" y2="100%" />`,"ready to hand over"]].filter(([i])=>i).map(([,i,r])=>j0(i,r))}var Wo=e=>["/work",e].join("/");function ll(e=!1){let t=(n,o,i,r=!1)=>f({of:"studio",label:o,at:Wo(n),unit:i,optional:!0,takes_part:!0,is_due:r,short:!0});return[t("each_batch","Each batch","min",e),t("each_piece_made","Each piece made","s"),t("each_tray_fill","Each tray fill","min"),t("each_piece_packed","Each piece packed","s")]}var q0=({cautions:e})=>e.filter(({severity:t})=>t!=="danger").map(({severity:t,text:n})=>t==="note"?s`<p>${bt(n)}</p>`:s`<p class="minded"><strong>Caution</strong> ${bt(n)}</p>`),qr=(e,t,n="")=>s`<tr>
    <th scope="row">${e}</th>
    <td><b>${O(t)}</b></td>
    <td>${n}</td>
  </tr>`;function U0(e){let{units:t}=a,{made:n,for:o,lye_of:i,pot:r}=e,l=r.full_pot_g===null?"":`with its pot ${O(te(t,{g:r.full_pot_g,g_text:r.full_pot_g_text,oz_text:r.full_pot_oz_text}))}`;return s`<h3>One pot of lye solution, made on the evening of ${Te(n)}</h3>
    <p>
      For ${i==="topping"?"the toppings of ":""}${bt(o)};
      ${R(r.strength_percent,1)} % strong. In place of the lye in the plan of each.
    </p>
    <table class="figures">
      <tbody>
        ${qr("Water, distilled",te(t,he(r,"water_")))}
        ${r.alkalis.map(d=>qr(d.name,te(t,he(d,""),"down")))}
        ${qr("Lye solution in the pot",te(t,he(r,"lye_")),l)}
        ${r.shares.map(d=>s`${qr(`Out of it for ${d.batter}`,te(t,he(d,"lye_"),"down"),`superfat then ${Ze(d.superfat_percent)}`)}
            ${d.top_up_g>0?qr(`and plain water to ${d.batter}`,te(t,he(d,"top_up_"))):u}`)}
      </tbody>
    </table>
    ${q0(e)}`}var D$=({lyes:e})=>e.map(U0),P$=({lyes:e,notes:t})=>[...new Set([...e.flatMap(({cautions:n})=>n),...t].filter(({severity:n})=>n==="danger").map(({text:n})=>n))];var Eo=e=>v(a.printing,e);function O$(e,t){let n=document.createElement("a");n.href=e,t(n),n.click()}async function M$(e){if(!a.printing.is_working){Eo({is_working:!0,told:"Making it ...",on:a.view});try{await z0(),Eo({told:await e()})}catch(t){Eo({told:t instanceof Error?t.message:String(t)})}Eo({is_working:!1})}}async function z0(){await Zt(),await Pt();let e=a.view==="order"?a.order?.open:void 0,t=_n("run")??(e?.theirs&&e);if(t)throw new Error(`${t.file} was changed outside this page: choose first which version to keep.`)}var ro=()=>a.printing.on===a.view?a.printing.told:"",Xe=(e,t)=>()=>M$(async()=>{let n=URL.createObjectURL(await Jt(t));return O$(n,o=>o.download=e),window.setTimeout(()=>URL.revokeObjectURL(n),6e4),`${e} is in your downloads.`}),J0=e=>()=>M$(async()=>(O$(await cm(e),t=>Object.assign(t,{target:"_blank",rel:"noopener"})),"It is open in a tab of its own: print it there at 100 %, not fitted to the page.")),K0=e=>{Eo({paper:e}),localStorage.setItem("paper",e)},ul=()=>ue("Paper",a.printing.paper,[["A4","A4"],["Letter","Letter"]],K0),Ke=(e,t,n="",o=!1)=>s`<button
    type="button"
    class=${n}
    ?disabled=${a.printing.is_working||o}
    @click=${()=>{t()}}
  >
    ${e}
  </button>`,dn=({words:e,kind:t,file:n,of:o,is_asleep:i},r="")=>s`${Ke(`${e}, to print`,J0({kind:t,...o}),r,i)}
  ${a.files?.makes_pdf?Ke(`${e}, PDF`,Xe(`${n}.pdf`,{kind:`${t}-pdf`,...o}),"",i):""}`,so=e=>e.split("/").at(-1).replace(/(\.(run|order))?\.json$/,"");var cn={run:"/money/currency",studio:"/currency"},dl={run:"/money/prices",studio:"/prices"},qt=()=>on(cn)!==void 0;function Di(){let[e,t]=[g("run",cn.run),g("studio",cn.studio)];return e!==void 0&&t!==void 0&&e!==t?[]:[cn,dl]}var cl=()=>A("studio",cn.studio)||String(on(cn)??"");async function B$(e,t=""){if(e==="run"||!a.order)return;let{open:n}=a.order,o=Wn(n.now).map(({run:r})=>gn(n.file,r)),i=o.find(r=>pl(r,t))??o[0];(!o.includes(a.run.file)||o.some(r=>pl(r,t)))&&await Xt(i,"set-up")}var pl=(e,t)=>e!==""&&(e===t||t.endsWith(`/${e}`)),F$=e=>{requestAnimationFrame(()=>requestAnimationFrame(e))};function Ur(e,t){for(let n=t;n;n=n.slice(0,n.lastIndexOf("/"))){let o=document.getElementById(J(e,n));if(o)return o}}var C$=(e,t)=>{le("set-up studio"),Ee("studio",e),pt("set-up"),F$(()=>ze(Ur("studio",t)))};async function L$(e){await B$(e),se()||await Us(),C$("days","/days/making/monday")}var V0=["order","run","pour","pipe","studio"];async function jc(e,{file:t,field:n}){if(e==="order"&&pl(a.order.open.file,t))return ze(Ur("order",n));await B$(e,t);let o=V0.find(i=>pl(Hn(i)?.file??"",t));if(o==="pour"||o==="pipe")Ye(o);else{if(o==="studio")return C$(n.startsWith("/work")&&qt()?"money work":"days",n);if(Ur("run",n))return ze(Ur("run",n));pt("set-up")}F$(()=>ze(Ur(o??"run",n)))}function ml(e){let{days:t,complaint:n,is_old:o}=al(e);return s`<section class="piece days" aria-labelledby="days-title">
    <h2 id="days-title">When it is made</h2>
    ${n?Q0(e,n):u}
    ${t?s`<div class=${o?"old":""}>${G0(e,t)}</div>
            ${aS(e,o)}`:n?u:s`<p class="hint" role="status">Asking when it is made ...</p>`}
  </section>`}function Q0(e,t){let{field:n,is_fault:o}=t;return o?s`<p class="alarm" role="status">${H(t)}</p>
      <button type="button" @click=${()=>Cc(e)}>Ask again</button>`:["/days","/days/making"].includes(n)||e==="run"&&!se()?s`<p role="status">
        Your making days are not known yet: say on which weekdays you make soap, and for how long.
      </p>
      <button type="button" class="strong" @click=${()=>{L$(e)}}>To my making days</button>`:["/work",Wo("each_batch")].includes(n)?s`<p role="status">
        How long a batch takes you is not known yet, and so not how many of them a day holds.
      </p>
      <button
        type="button"
        class="strong"
        @click=${()=>{jc(e,{...t,field:Wo("each_batch")})}}
      >
        To the time of a batch
      </button>`:s`<p class="alarm" role="status">${Sn(n)}${bt(H(t))}</p>
    ${n?s`<button type="button" @click=${()=>{jc(e,t)}}>Go to the field</button>`:u}`}var G0=(e,t)=>s`${rS(t)} ${Y0(e,t)} ${A$(t)} ${eS(e,t)} ${D$(t)} ${oS(t)}
  ${iS(t)} ${sS(t)}`,Hc=(e,t,n)=>s`<small>${e?t:n}</small>`;function Y0(e,t){let{kept:n,promise:o,promise_proved:i,from:r}=t;return n===null?s`<p class="when">
        Begun today, ${Te(r)}, promise it for <b>${Te(o)}</b>.
        ${Hc(i,"No earlier day can be kept.","The search ended here: an earlier day may be possible.")}
      </p>
      <button type="button" @click=${()=>ze(document.getElementById(J(e,"/due")))}>
        Give it a due day
      </button>`:n?Z0(t):X0(t)}function Z0({asked:e,latest_start:t,latest_start_proved:n,promise:o,promise_proved:i}){let[{due:r,pieces:l,last_making_day:d}]=e;return s`<p class="when">
      Begin on <b>${Te(t)}</b> at the latest to have ${V(l,"piece")} by
      <b>${Te(r)}</b>.
      ${Hc(n,"A later start does not keep it.","The search ended here: a later start may be possible.")}
    </p>
    ${d?s`<p>The last day to pour any of it is ${Te(d)}.</p>`:u}
    <p>
      Begun today, all of it can be ready by ${Te(o)}.
      ${i?u:s`<small>The search ended here: an earlier day may be possible.</small>`}
    </p>`}function X0({asked:e,in_time_proved:t}){let n=({pieces:o,in_time:i,due:r,rest_on:l})=>i?s`${i} of ${V(o,"piece")} by ${Te(r)}, the rest on <b>${Te(l)}</b>.`:s`none of the ${V(o,"piece")} by ${Te(r)}, all of them on <b>${Te(l)}</b>.`;return s`${e.filter(({kept:o})=>o===!1).map(o=>s`<p class="alarm when">
            <strong><span aria-hidden="true">⚠</span> The due day cannot be kept:</strong> ${n(o)}
          </p>`)}
    <p>
      ${Hc(t,"No more can be in time, and the rest is ready no earlier.","The search ended here: more may be possible.")}
    </p>`}var eS=(e,{days:t})=>s`<details ?open=${e==="run"}>
    <summary>Day by day</summary>
    <ol class="by-day">
      ${t.map(n=>s`<li>
            <h3>${Te(n.day)} <small>${tS(n)}</small></h3>
            <ul>
              ${n.acts.map(nS)}
            </ul>
          </li>`)}
    </ol>
  </details>`,tS=({hours_min:e,used_min:t,off:n})=>n?"day off":e&&t?`${$a(t)} of ${$a(e)}`:"",nS=({text:e,min:t,caution:n})=>s`<li>
    ${bt(e)}${t?s` <small>${$a(t)}</small>`:u}
    ${n?s`<p class="minded"><strong>Caution</strong> ${n}</p>`:u}
  </li>`;function oS({what_if:e,kept:t}){if(!e.length)return s`<h3>What sets the date</h3>
      <p>No wider limit that was tried makes it earlier: the time to cure and to pack does.</p>`;let n=({keeps_due:o,latest_start:i,promise:r,proved:l})=>[o&&!t?"keeps the due day, ":"",o?`begin on ${Te(i)} at the latest`:`ready by ${Te(r)}`,l?"":" (the search ended there)"].join("");return s`<h3>${t===!1?"What would help":"What limits it"}</h3>
    <p class="hint">Each was planned with that change alone.</p>
    <ul class="limits">
      ${e.map(o=>s`<li>${o.text}: <b>${n(o)}</b></li>`)}
    </ul>`}function iS({extras:e}){return e.length?s`<h3>From base that is left over</h3>
    <p class="hint">Not counted above.</p>
    <ul class="limits">
      ${e.map(({run:t,batch:n,mould:o,cavities:i})=>s`<li>Batch ${n} of ${t} fills ${V(i,"cavity","cavities")} of ${o}</li>`)}
    </ul>`:u}function rS(e){let t=P$(e);return t.length?s`<div class="dangers">
    ${t.map(n=>s`<p class="danger"><strong>${st}</strong> ${bt(n)}</p>`)}
  </div>`:u}function sS({notes:e}){let t=e.filter(({severity:o})=>o!=="danger"),n=({severity:o,text:i})=>o==="note"?s`<p>${bt(i)}</p>`:s`<p class="minded"><strong>Caution</strong> ${bt(i)}</p>`;return t.length?s`<h3>To mind</h3>
        ${t.map(n)}`:u}function aS(e,t){let n=T$(e),o=so(n.file),i={plan:n,paper:a.printing.paper,"with-days":!0};return s`<section class="on-paper" aria-labelledby="days-papers">
    <h3 id="days-papers">In a calendar, on paper</h3>
    <div class="choice">
      ${Ke("Calendar file (.ics)",Xe(`${o} days.ics`,{kind:"calendar",days:n}),"",t)}
      ${dn({words:"Days and bench sheet",kind:"sheet",file:`${o} days and sheet`,of:i,is_asleep:t})}
      ${Ke("Table of the days (.csv)",Xe(`${o} days.csv`,{kind:"days-csv",days:n}),"",t)}
    </div>
    <p class="hint">Taken into a calendar again, its entries move with the days.</p>
    <p role="status">${ro()}</p>
  </section>`}var No=e=>(t,n,o="")=>s`<tr class=${o}>
      <th scope="row">${t}</th>
      ${e.map(i=>s`<td><b>${n(i)}</b></td>`)}
    </tr>`,zr=(e,t)=>s`<tr class="group">
    <th scope="rowgroup" colspan=${t.length+1}>${e}</th>
  </tr>`;function Jr(e,t,n,o){let i=`quote ${t}`,r=a.open.has(i),l=`quote-${t.replaceAll(/\W/g,"-")}`,d=s`<button
    type="button"
    class="line"
    aria-expanded=${r?"true":"false"}
    aria-controls=${r?l:u}
    @click=${()=>He("open",i)}
  >
    ${t}<span class="how" aria-hidden="true">${r?"\u2013":"="}</span>
  </button>`;return s`${No(e)(d,n)}
  ${r?s`<tr class="opened">
          <td colspan=${e.length+1} id=${l}>${e.map(o)}</td>
        </tr>`:u}`}var Kr=(e,t)=>s`<div class="sum">
    <table>
      <caption>
        ${e}
      </caption>
      <tbody>
        ${t}
      </tbody>
    </table>
  </div>`;function fl({parts:e,items:t},n){let o=e.find(i=>i.part===n);return o?t.some(i=>i.part===n&&i.cost!==null&&!i.from_tap)?o.each:"unpriced":"\u2013"}var hl=(e,{items:t},n)=>Kr(e,t.filter(o=>o.part===n).map(({name:o,amount:i,cost:r,how:l})=>s`<tr>
            <th scope="row">${o}</th>
            <td>${r??"unpriced"}</td>
            <td>${l||i}</td>
          </tr>`)),gl=(e,t)=>Jr(e,"To lay out now, in whole packs",({cash:n})=>n?.total??"nothing",n=>s`${lS(t(n),n.cash)} ${uS(n.cash)}`),lS=(e,t)=>s`${Kr(`Packs to buy, ${e}`,(t?.packs??[]).map(({shown_as:n,count:o,holds:i,sum:r,seller:l})=>s`<tr>
          <th scope="row">${n}</th>
          <td>${r}</td>
          <td>${o} × ${i}${l?`, ${l}`:""}</td>
        </tr>`))}
  ${t?.unpriced.length?s`<p class="alarm">No pack is listed, and not in the sum: ${t.unpriced.join(", ")}.</p>`:u}
  ${t&&!t.proved_cheapest?s`<p class="hint">Not proved to be the least that is possible.</p>`:u}`,uS=e=>Kr("Left of them when all is made",(e?.left??[]).map(({shown_as:t,left:n})=>s`<tr>
          <th scope="row">${t}</th>
          <td>${n}</td>
        </tr>`));function Vr(e){let t=e.flatMap(({prices:n})=>n);return t.filter((n,o)=>t.findIndex(({way:i})=>i===n.way)===o)}var I$=e=>`${R(e,1)} %`;function dS(e){return"margin_percent"in e?`margin ${R(e.margin_percent,2)} %`:"markup_percent"in e?`markup ${R(e.markup_percent,2)} %`:"price as set"}var qc=(e,t)=>({prices:n})=>{let o=n.find(i=>i.way===e);return o?t(o):"\u2013"};function _l(e,t,{way:n,by:o,ask:i,with_tax:r},l,d=u){let c=i===r,p=No(e),m=b=>qc(n,b),_=(b,w)=>l?s`${w} ${Xn(b)}`:w;return s`<tbody>
    ${zr(s`<span class="way">${n}</span>, ${dS(o)}`,e)} ${d}
    ${p(t?c?"Ask, with tax":"Ask, without tax":"Ask",m(Uc),"ask")}
    ${t?p("tax in it",m(({tax:b})=>c?b:"none")):u}
    ${p("fees",m(({fees:b})=>b))}
    ${p("left for you",m(({profit:b})=>b))}
    ${p(_("margin","margin, of the price"),m(b=>I$(b.margin_percent)))}
    ${p(_("markup","markup, on the cost"),m(b=>I$(b.markup_percent)))}
  </tbody>`}var Uc=({ask:e,is_below_cost:t})=>t?s`<span class="below">${e}<small>below cost</small></span>`:e;function $l(e,t){let n=o=>e.filter(({prices:i})=>i.some(r=>r.way===o&&r.is_below_cost));return Vr(e).map(({way:o})=>({way:o,sold:n(o)})).filter(({sold:o})=>o.length).map(({way:o,sold:i})=>s`<p class="alarm below-cost">
          <strong><span aria-hidden="true">⚠</span> Below cost</strong> ${o}: ${t(i)}
        </p>`)}var zc=e=>e===1?"once":`${e} times`;function W$({times:e,currency:t,has_tax:n},o){let i=No(e);return s`<p class="aside">Money in ${t}${n?"; costs are without tax":""}.</p>
    <div class="side-by-side" role="region" tabindex="0" aria-label="Costs and prices of the order">
      <table class="quote-table ${o?"old":""}">
        <thead>
          <tr>
            <th scope="col">The order, made</th>
            ${e.map(r=>s`<th scope="col"><b>${zc(r.times)}</b></th>`)}
          </tr>
        </thead>
        <tbody>
          ${i("pieces",({pieces:r})=>r)}
        </tbody>
        <tbody>
          ${zr("It costs",e)} ${e[0].lines.map((r,l)=>cS(e,l))}
          ${i("The whole order",({cost:r})=>r,"sum-of")}
        </tbody>
        <tbody>
          ${gl(e,r=>`made ${zc(r.times)}`)}
        </tbody>
        ${Vr(e).map((r,l)=>_l(e,n,r,l===0,fS(e,r.way)))}
      </table>
    </div>`}var Jc=({run:e,sell:t})=>`${e??""}, ${t} ${t===1?"piece":"pieces"}`,cS=(e,t)=>Jr(e,Jc(e[0].lines[t]),({lines:n})=>n[t].cost,({lines:n})=>s`${pS(n[t])} ${n[t].parts.map(({part:o})=>mS(n[t],o))}`),pS=e=>Kr(`A piece of ${Jc(e)}, ${e.make} made`,[...e.parts.map(({part:t})=>[t,fl(e,t)]),["Cost of a piece",e.cost_each]].map(([t,n])=>s`<tr>
          <th scope="row">${t}</th>
          <td>${n}</td>
        </tr>`)),mS=(e,t)=>hl(`${t} of all of them, ${Jc(e)}`,e,t),fS=(e,t)=>e[0].lines.map(({run:n},o)=>No(e)(`${n??""}, a piece`,({lines:i})=>qc(t,Uc)(i[o]))),E$=({times:e})=>$l(e,t=>`the order loses money, made ${t.map(n=>zc(n.times)).join(", ")}.`);function N$({times:e}){let t=e.flatMap(({together:o})=>o.flatMap(({cautions:i})=>i)),n=e.flatMap(({lines:o})=>o.flatMap(({run:i,dangers:r})=>r.map(l=>`${i??""}: ${l}`)));return n.push(...t.filter(({severity:o})=>o==="danger").map(({text:o})=>o)),n.length?s`<div class="dangers">
    ${[...new Set(n)].map(o=>s`<p class="danger"><strong>${st}</strong> ${o}</p>`)}
  </div>`:u}function j$({times:e,remarks:t=[]}){let[{together:n,lines:o}]=e,i=n.flatMap(({cautions:r})=>r).filter(({severity:r})=>r!=="danger");return!n.length&&!t.length?u:s`<ul class="limits">
    ${n.map(r=>s`<li>
          <b
            >Poured together (${r.word}): ${jt(r.lines.map(l=>o[l].run??""))} from one base,
            "${r.formula}", ${O(j(a.units,r.make_g))} in
            ${V(r.batches.reduce((l,{count:d})=>l+d,0),"batch","batches")}.</b
          >
        </li>`)}
    ${i.map(({text:r})=>s`<li>${r}</li>`)} ${t.map(r=>s`<li>${r}</li>`)}
  </ul>`}function hS(e){return e.length<2?e[0]?.way:e.find(({way:t})=>t===a.printing.way)?.way}function bl({file:e,question:t,prices:n,is_old:o}){let i=so(e),r=hS(n),l={quote:n.length>1&&r?{...t,way:r}:t},d=n.map(p=>[p.way,p.way]),c={buy:{files:[e]}};return s`<section class="on-paper" aria-labelledby="quote-papers">
    <h3 id="quote-papers">On paper</h3>
    ${d.length>1?s`<p class="question">The price that is offered</p>
            ${ue("The price that is offered",r,d,p=>v(a.printing,{way:p}))}`:u}
    <div class="choice">
      ${n.length?dn({words:"Offer",kind:"offer",file:`${i} offer`,of:l,is_asleep:o||!r}):u}
      ${dn({words:"All of it, for you",kind:"quote",file:`${i} costs`,of:{quote:t}})}
      ${a.files?.studios.length?s`${dn({words:"Shopping list",kind:"list",file:`${i} to buy`,of:c})}
            ${Ke("Shopping list, table",Xe(`${i} to buy.csv`,{kind:"list-csv",...c}))}`:u}
    </div>
    ${n.length?r?u:s`<p class="hint">An offer has one price: choose which.</p>`:s`<p class="hint">Nothing can be offered before there is a price for it.</p>`}
    <p role="status">${ro()}</p>
  </section>`}var Kc=class extends HTMLElement{#n;#e="";#t="";#i="";#o=new IntersectionObserver(([t])=>t.isIntersecting&&void this.#l(),{rootMargin:"200px"});connectedCallback(){this.#r()}disconnectedCallback(){this.#o.disconnect(),this.#s()}set words(t){this.#e=t}set question(t){JSON.stringify(t)!==JSON.stringify(this.#n)&&(this.#n=t,this.#s(),this.#a(),this.#r())}#r(){this.#o.disconnect(),this.isConnected&&this.#o.observe(this)}#s(){this.#t&&URL.revokeObjectURL(this.#t),[this.#t,this.#i]=["",""]}async#l(){this.#o.disconnect();let t=this.#n,[n,o]=await gS(t);if(t!==this.#n||!this.isConnected)return URL.revokeObjectURL(n);[this.#t,this.#i]=[n,o],this.#a()}#a(){let t=this.#i||"Drawing ...";ht(this.#t?s`<img src=${this.#t} alt=${this.#e} />`:s`<p class="hint">${this.#n?t:u}</p>`,this)}};async function gS(e){try{return[URL.createObjectURL(await Jt({kind:"picture",quote:e})),""]}catch(t){if(!(t instanceof y))throw t;return["",t.message]}}customElements.define("cost-picture",Kc);function H$(e,t){let{costs:n,currency:o}=e;if(!n.length)return u;let[i,r]=[n[0],n.at(-1)],l=({sell:d,each:c})=>`${c} ${o} at ${d}`;return s`<section class="cost-picture" aria-labelledby="cost-picture">
    <h3 id="cost-picture">A piece's cost, by how many are made</h3>
    <div class="side-by-side" role="region" tabindex="0" aria-label="Picture of the cost of a piece">
      <cost-picture
        .words=${`Cost of a piece against the pieces sold, from ${l(i)} to ${l(r)}, and where the money of a piece goes. The figures stand below.`}
        class=${t?"old":""}
        .question=${t?Be:il()}
      ></cost-picture>
    </div>
    <details>
      <summary>The same in figures</summary>
      <table class="figures">
        <thead>
          <tr>
            <th scope="col">Pieces sold</th>
            <th scope="col">A piece costs, ${o}</th>
          </tr>
        </thead>
        <tbody>
          ${_S(e).map(({sell:d,each:c})=>s`<tr>
                <th scope="row">${d}</th>
                <td>${c}</td>
              </tr>`)}
        </tbody>
      </table>
    </details>
  </section>`}function _S({costs:e,numbers:t,steps:n}){let o=new Set([...t.map(({sell:i})=>i),...n.flatMap(({sell:i})=>[i-1,i]),e[0].sell,e.at(-1).sell]);return e.filter(({sell:i})=>o.has(i))}var q$=({sell:e})=>`${e} to sell`;function U$({numbers:e,currency:t,has_tax:n},o){let i=No(e);return s`<p class="aside">Money in ${t}${n?"; costs are without tax":""}.</p>
    <div class="side-by-side" role="region" tabindex="0" aria-label="Costs and prices, side by side">
      <table class="quote-table ${o?"old":""}">
        <thead>
          <tr>
            <th scope="col">Pieces to sell</th>
            ${e.map(r=>s`<th scope="col"><b>${r.sell}</b></th>`)}
          </tr>
        </thead>
        <tbody>
          ${i("to make",r=>r.make)} ${i("fillings",r=>r.fillings)}
          ${i("batches",r=>r.batches)}
          ${e.some(r=>r.to_stock)?i("beyond those, at no cost",r=>r.to_stock):u}
        </tbody>
        <tbody>
          ${zr("A piece costs",e)} ${$S(e).map(r=>bS(e,r))}
          ${i("Cost of a piece",r=>r.cost_each,"sum-of")} ${i("The whole run",r=>r.cost)}
        </tbody>
        <tbody>
          ${gl(e,q$)}
        </tbody>
        ${Vr(e).map((r,l)=>_l(e,n,r,l===0))}
      </table>
    </div>`}var $S=e=>[...new Set(e.flatMap(({parts:t})=>t.map(({part:n})=>n)))],bS=(e,t)=>Jr(e,t,n=>fl(n,t),n=>hl(`${t} of the whole run, ${q$(n)}`,n,t)),z$=({numbers:e})=>$l(e,t=>`each piece sold loses money, at ${t.map(({sell:n})=>n).join(", ")} to sell.`);function J$(){return s`<section class="piece quote" aria-labelledby="quote-title">
    <h2 id="quote-title">What it costs, what to ask</h2>
    ${qt()?yS():wS()}
  </section>`}var wS=()=>s`<p class="hint">Once it is known what you paid for the materials, it stands here what a piece costs.</p>
    <button type="button" @click=${()=>Vc()}>To the prices paid</button>`;function Vc(e,t="lane-studio"){le("set-up studio"),e&&Ee("studio",e),pt("set-up"),requestAnimationFrame(()=>z(L(t)))}function yS(){let{quote:e,complaint:t,is_old:n}=nl();return s`${e?s`${vS(e)} ${z$(e)}`:u}
    <div class="row">${TS(t)}</div>
    ${Qc()?u:Gc(e?.currency,t)} ${t?xS(t):u}
    ${e?DS(e,n):t?u:s`<p class="hint" role="status">Asking what it costs ...</p>`}`}function vS({numbers:e}){let t=[...new Set(e.flatMap(o=>o.dangers))];if(!t.length)return u;let n=o=>e.filter(i=>i.dangers.includes(o)).map(i=>i.sell);return s`<div class="dangers">
    ${t.map(o=>s`<p class="danger"><strong>${st}</strong> ${n(o).join(", ")} to sell: ${o}</p>`)}
  </div>`}var kS=["sell","margin","markup","price"],Pi=(e,t)=>e?.file===""&&e.field===t?H(e):void 0;function xS(e){return kS.some(t=>Pi(e,t))?u:s`<p class="alarm" role="status">${Sn(e.field)}${H(e)}</p>
    ${e.is_fault?s`<button type="button" @click=${Ac}>Ask again</button>`:e.field.startsWith("/")?s`<button type="button" @click=${kc}>Go to the field</button>`:u}
    ${yc(e)}`}function wl({id:e,label:t,unit:n,value:o,hint:i,complaint:r,take:l,left:d}){return s`<div class="field ${r?"wants":""}">
    <label for=${e} data-said=${n??u}>${t}</label>
    <input
      id=${e}
      .value=${M(o)}
      @input=${c=>l(c.target.value)}
      @blur=${()=>d?.()}
      autocomplete="off"
      spellcheck="false"
      aria-invalid=${r?"true":"false"}
      aria-describedby=${r||i?`${e}-said`:u}
    />
    ${ge(e,r,i)}
  </div>`}function TS(e){let{numbers:t}=a.quote_wish;return wl({id:"quote-numbers",label:"Numbers of pieces",value:t??String(a.plan?.pieces.sell??""),hint:"One, or several to compare: 12, 24, 48",complaint:Pi(e,"sell"),take:n=>er({numbers:n}),left:()=>{t!==void 0&&!t.trim()&&er({numbers:void 0})}})}var RS=()=>se()?Vc("money asking",`${J("studio","/asking")}-name`):Vc(),Qc=()=>Object.keys(g("studio","/asking")??{}).length>0,SS=[["margin","By a margin"],["markup","By a markup"],["price","A price as set"]],AS={margin:{label:"Margin, of the price",unit:"%"},markup:{label:"Markup, on the cost",unit:"%"},price:{label:"Price of a piece",unit:""}};function Gc(e,t){let{by:n,figure:o}=a.quote_wish,{label:i,unit:r}=AS[n??"price"],l=d=>r&&Ue(d)?`${d.trim()} ${r}`:d;return s`${ue("A price, for this moment",n,SS,d=>{er({by:d,figure:""}),z(L("quote-figure"))})}
    ${n?s`<div class="row">
            ${wl({id:"quote-figure",label:i,unit:r||e,value:r?o.replace(/ %$/,""):o,complaint:Pi(t,n),take:d=>er({figure:l(d)})})}
          </div>`:u}
    <p class="hint">Your ways of selling can be kept in My studio: then each price stands here.</p>
    <button type="button" @click=${RS}>Keep my ways of selling</button>`}function DS(e,t){let n=[...new Set(e.numbers.flatMap(o=>o.unpriced))];return s`${n.length?s`<p class="alarm">
          <strong>Unpriced</strong>, and so no price to ask: ${n.join(", ")}. The cost leaves it out.
        </p>`:u}
  ${e.remarks.map(o=>s`<p class="hint">${o}</p>`)} ${U$(e,t)}
  ${PS(e,t)} ${H$(e,t)}
  ${bl({file:a.run.file,question:il(),prices:e.numbers[0].prices,is_old:t})}`}function PS({numbers:e,steps:t,pack_steps:n,pack_steps_untold:o,gaps:i,currency:r},l){let d=c=>c===null?"":`, ${c} ${r} more`;return s`<div class="worth-making ${l?"old":""}">
    <h3>How many is it worth making?</h3>
    <ul class="limits">
      ${e.flatMap(({around:c})=>c.map(({text:p})=>s`<li><b>${p}</b></li>`))}
      ${i.map(({from:c,to:p,why:m})=>s`<li><b>${c===p?c:`${c} to ${p}`} cannot be made: ${m}.</b></li>`)}
    </ul>
    ${t.length?s`<details>
            <summary>Where the run begins to cost more</summary>
            <ul class="limits">
              ${t.map(c=>s`<li><b>${c.sell}: ${c.begins}${d(c.more)}</b></li>`)}
            </ul>
          </details>`:u}
    ${n.length||o.length?s`<details>
            <summary>Where another pack begins</summary>
            <p class="hint">Each material by itself, in its cheapest packs, without postage.</p>
            <ul class="limits">
              ${n.map(c=>s`<li><b>${c.sell}: ${c.shown_as}${d(c.more)} to lay out</b></li>`)}
              ${o.map(({from:c,to:p,shown_as:m,why:_})=>s`<li><b>${c===p?c:`${c} to ${p}`}: ${m}, not told: ${_}.</b></li>`)}
            </ul>
          </details>`:u}
  </div>`}function K$(){let{order:e}=a;if(!e)return s`<h1 tabindex="-1">Order</h1>`;let{open:t}=e,{due:n}=t.now;return s`${sn(t)} ${an(t)}
    <h1 tabindex="-1">${String(t.now.for||"Order")}</h1>
    <p class="aside">${t.file}${n?`, due ${oe(String(n))}`:u}</p>
    ${b$()} ${$n(t.now)?ml("order"):u}
    <section class="piece quote" aria-labelledby="quote-title">
      <h2 id="quote-title">What it costs, what to ask</h2>
      ${$n(t.now)?MS():OS()}
    </section>
    ${$n(t.now)?IS():u}`}var OS=()=>s`<p class="hint" role="status">
    Once each line has its run and its pieces, it stands here what the order costs.
  </p>`;function MS(){let{quote:e,complaint:t,is_old:n}=$$();return s`${e?s`${N$(e)} ${E$(e)}`:u}
    <div class="row">${BS(t)}</div>
    ${Qc()?u:Gc(e?.currency,t)} ${t?CS(t):u}
    ${e?s`${LS(e)} ${j$(e)} ${W$(e,n)}
          ${bl({file:Ie().open.file,question:Mc(Ie()),prices:e.times[0].prices,is_old:n})}`:t?u:s`<p class="hint" role="status">Asking what it costs ...</p>`}`}var BS=e=>wl({id:"order-times",label:"How often it is made",value:Ie().times,hint:"Once, if nothing is typed; several to compare: 1, 2, 4",complaint:Pi(e,"times"),take:t=>v(Ie(),{times:t})}),FS=["times","margin","markup","price"];function CS(e){if(FS.some(n=>Pi(e,n)))return u;let t=yt("order");return s`<p class="alarm" role="status">
      ${t?s`${Sn(e.field)}${H(e)}`:e.line}
    </p>
    ${e.is_fault?s`<button type="button" @click=${Oc}>Ask again</button>`:t&&nn()?s`<button type="button" @click=${()=>ze(nn())}>Go to the field</button>`:u}`}function LS({times:e}){let t=[...new Set(e.flatMap(n=>n.unpriced))];return t.length?s`<p class="alarm">
    <strong>Unpriced</strong>, and so no price to ask: ${t.join(", ")}. The cost leaves it out.
  </p>`:u}function IS(){let{file:e,now:t}=Ie().open,n={plan:{file:e,order:t},paper:a.printing.paper};return s`<section class="out" aria-labelledby="sheets-title">
    <h2 id="sheets-title">The sheets for the bench</h2>
    ${ul()}
    <div class="choice">
      ${dn({words:"Bench sheets",kind:"sheet",file:`${so(e)} sheets`,of:n},"strong")}
    </div>
    <p role="status">${ro()}</p>
  </section>`}var WS=(e,t)=>(e.due??"~").localeCompare(t.due??"~")||(t.changed??"").localeCompare(e.changed??"");function V$(){let e=[...a.files?.orders??[]].sort(WS),t=a.new_order.trim(),n=()=>{de(async()=>{await tg(t),h({new_order:""})})};return s`${kt("Orders")}
    <section aria-labelledby="orders-title">
      <h2 id="orders-title">Your orders</h2>
      ${e.length?Ht(e,ES):s`<p class="aside">
              None yet. An order names runs of yours and how many pieces of each somebody wants.
            </p>`}
      <h2>A new order</h2>
      <div class="row">
        <div class="field">
          <label for="new-order">For</label>
          <input
            id="new-order"
            .value=${M(a.new_order)}
            @input=${o=>h({new_order:o.target.value})}
            autocomplete="off"
            spellcheck="false"
          />
        </div>
        <button type="button" ?disabled=${!t} @click=${n}>Begin the order</button>
      </div>
      ${t?"":s`<p class="hint">Say first who it is for: a customer, a market.</p>`}
    </section>
    ${xt("order")}`}function ES(e){let{pieces:t,due:n,changed:o}=e,i=[t===void 0?"":V(t,"piece"),n?`due ${oe(n)}`:"",o?`changed ${oe(o)}`:""].filter(Boolean);return ln({kind:wo,one:e,facts:i,open:()=>wr(e.file)})}function G$(){if(a.view==="order"&&a.order)return Q$(a.order.open);let e=Un();if(e)return Q$(e);let t=NS();if(t)return t;let{run:n}=a,o=a.formula_of==="apart"||!(Y(n)||n.theirs||n.failed);return a.view==="formula"&&o?jS():n.theirs?Xc(n):n.failed?vl(`Not saved: ${n.failed}`):Y(n)?Zc:yl(n.shipped?Yc:`Saved in ${n.file}`)}function Q$(e){return e.theirs?Xc(e):e.failed?vl(`Not saved: ${e.failed}`):Y(e)?Zc:yl(e.shipped?Yc:`Saved in ${e.file}`)}var Yc="Built-in: your first change is saved as a copy.",Zc={words:"Saving ...",is_kept:!1},yl=e=>({words:e,is_kept:!0}),vl=e=>({words:e,is_kept:!1,is_failed:!0}),Xc=e=>vl(xo(e)?`Not saved: ${e.file} was deleted outside this page. Save it again, or leave it deleted.`:`Not saved: ${e.file} was changed outside this page. Choose which version to keep.`);function NS(){let e=a.formulas.apart?"apart":"run",t=_n(e);if(t)return Xc(t);if((e==="apart"?[a.formulas.apart]:[a.formulas.pour,a.formulas.pipe]).some(o=>o&&Y(o)))return a.complaint?.file===""?vl(`Not saved: ${a.complaint.problem}`):Zc}function jS(){let e=a.formulas[a.formula_of];return yl(e?e.shipped?Yc:`Saved in ${e.file}`:"")}function xl(){let{view:e,mould:t,order:n,past:o,future:i}=a;if(e==="moulds"&&t)return kl(t,Yh,Zh);let r=ft(e)?Un():void 0;return r?kl({past:Y$(r,o),future:Y$(r,i)},sr,Fu):ft(e)?{undo:lr()&&Wd,redo:Nu()&&Yg}:e==="order"&&n?kl(n,ng,og):kl({past:o,future:i},sr,Fu)}function Y$(e,t){let n=t.at(-1),o=n&&[n.own_fats,n.own_tips].find(i=>i?.file===e);return o&&o.now!==e.now?t:[]}var kl=({past:e,future:t},n,o)=>({undo:e.length?n:void 0,redo:t.length?o:void 0});var Z$={runs:"Runs",orders:"Orders",formulas:"Formulas",moulds:"Moulds",fats:"Fats",tips:"Tips"},HS={weigh:["Weigh","M4 20h16M6 20l2-9h8l2 9M12 11V7M7 7h10M10 16h4"],record:["Record","M6 5h12v15H6zM9.5 3.5h5v3h-5zM9 11h6M9 15h4"],"set-up":["Set up","M4 7h9m4 0h3M4 17h3m4 0h9M15 4.5v5M9 14.5v5"],watch:["Cautions","M12 4l9 16H3zM12 10v5M12 17v1"],money:["Piece","M4 8h16v10H4zM4 8l3-3h10l3 3M9 13h6"],days:["Days","M5 6h14v14H5zM5 10.5h14M9 3.5v5M15 3.5v5"],mould:["Mould","M5 6h3l1 12h6l1-12h3M9.5 12h5"],print:["Print","M7 9V4h10v5M5 9h14v8h-3M8 17H5V9M8 14h8v6H8z"]},qS="M9 6l-5 5 5 5M4 11h9a6 6 0 0 1 6 6v2",US="M15 6l5 5-5 5M20 11h-9a6 6 0 0 0-6 6v2",ep=e=>s`<svg class="sign" viewBox="0 0 24 24" aria-hidden="true">${S`<path d=${e} />`}</svg>`;function tb(){let e=a.view==="reading";return s`<header class="rail">
    <div class="rail-top">
      <p class="mark" aria-hidden="true">▽ Brimwright</p>
      ${e?u:s`<nav class="rail-lists" aria-label="Lists">
                ${fm.map(t=>nb(t,Z$[t],s`${Z$[t]}`))}
              </nav>
              ${JS()}`}
    </div>
    ${e?u:KS()}
  </header>`}var zS={metric:s`g<span class="wide">, mm</span>`,both:s`both`,us:s`oz<span class="wide">, in</span>`},Tl=["metric","both","us"],X$={metric:"g",both:"both",us:"oz"},eb=e=>()=>{h({units:e}),localStorage.setItem("units",e)};function JS(){let e=Tl[(Tl.indexOf(a.units)+1)%Tl.length];return s`<div class="tools units" role="group" aria-label="Units">
      ${Tl.map(t=>s`<button type="button" aria-pressed=${a.units===t?"true":"false"} @click=${eb(t)}>
            ${zS[t]}
          </button>`)}
    </div>
    <button type="button" class="next-units" @click=${eb(e)}>
      <span aria-hidden="true">⇄ </span><span class="unseen">Units: </span>${X$[a.units]}<span
        class="unseen"
        >. Change to ${X$[e]}</span
      >
    </button>`}function KS(){let{undo:e,redo:t}=xl();return s`<div class="bar">
    ${a.run.file?VS():u}
    <div class="tools steps" role="group" aria-label="Steps">
      <button type="button" ?disabled=${!e} @click=${e}>${ep(qS)}<span>Undo</span></button>
      <button type="button" ?disabled=${!t} @click=${t}>${ep(US)}<span>Redo</span></button>
    </div>
    ${a.run.file||a.view==="order"?XS():u}
  </div>`}function VS(){return s`<nav aria-label="Views of this run">
    <p class="rail-name">${String(a.run.now.name??a.run.file)}</p>
    <div class="rail-views">${hm.map(QS)}</div>
  </nav>`}function QS(e){let[t,n]=HS[e],o=GS(e);return nb(e,o?`${t}, ${o.words}`:t,s`${ep(n)}<span>${t}</span>${o?s`<small class=${o.is_danger?"danger":""}
            ><span aria-hidden="true">${o.sign}</span> ${o.words}</small
          >`:u}`)}function GS(e){if(e==="watch"&&ag())return{sign:"\u26A0",words:"Danger",is_danger:!0};if(e==="record"&&YS())return{sign:"\u2717",words:"refused"};if(e==="set-up"&&ZS())return{sign:"\u25CB",words:"missing"}}var YS=()=>a.record.run===a.run.file&&a.record.batches.some(({begun:e})=>oa(e.id)>0),ZS=()=>a.complaint!==void 0&&!a.complaint.is_fault;function nb(e,t,n){let o=a.view===e||a.view==="order"&&e==="orders";return s`<button
    type="button"
    aria-label=${t}
    aria-current=${o?"page":u}
    @click=${()=>{pt(e)}}
  >
    ${n}
  </button>`}function XS(){let{words:e,is_kept:t,is_failed:n}=G$();return s`<p class="saving ${n?"failed":t?"kept":""}" role="status">${e}</p>`}var ob=()=>s`<section class="card" aria-label="What it is for">
      <div class="row">
        ${f({label:"Due",at:"/due",date:!0,optional:!0,short:!0,hint:"The day it is handed over. Left blank, it is begun today."})}
        ${f({label:"Pieces to sell",at:"/sell",count:!0,short:!0})}
        ${f({label:"For",at:"/for",optional:!0,hint:"Whom or what, such as the spring fair."})}
      </div>
    </section>
    ${ml("run")}`;function rb(e){if(!qg(e))return u;let{whole:t}=e,{batches:n}=t.pieces,o=Ne(t)?`${V(n,"batch","batches")} together`:"all whippings together";return s`<section class="needs" aria-labelledby="needs-title">
    <h2 id="needs-title" tabindex="-1">To have ready for the whole run <small>${o}</small></h2>
    <p class="aside">To buy and to set out by, not to weigh by: each batch is weighed by itself.</p>
    <div class="jugs">
      ${ib(e,"pour","The base, whole run")}
      ${t.pipe?ib(e,"pipe","The topping, whole run"):u} ${e1(e)}
    </div>
  </section>`}function ib(e,t,n){let{whole:o}=e,i=t==="pour"?o.pour:o.pipe,r=[...a_(i),...Ba(i)];return s`<div class="jug">
    <h3>${n} <small>${i.formula}</small></h3>
    ${r.map(({one:l,i:d})=>Rl(`${t}.ingredients.${d}.g`,l.name,Io(a.units,l)))}
    ${Rl(`${t}.make_g`,t==="pour"?"Base in all":"Topping in all",j(a.units,i.make_g))}
  </div>`}var Rl=(e,t,n)=>F({key:`needs.${e}`,label:t,shown:n,of:e});function e1(e){let{whole:t}=e,n=(t.pour.layers??[]).flatMap((r,l)=>r.colours.map((d,c)=>({layer:r,one:d,i:l,j:c}))),o=t.dust??[];if(!n.length&&!o.length)return u;let i=r=>te(a.units,he(r,""));return s`<div class="jug">
    <h3>Colours and dust, whole run</h3>
    ${n.map(({layer:r,one:l,i:d,j:c})=>Rl(`pour.layers.${d}.colours.${c}.g`,`${l.name}, for ${r.name}`,Io(a.units,l)))}
    ${o.map((r,l)=>Rl(`dust.${l}.g`,r.name,i(r)))}
  </div>`}function sb(e){let{cost:t,fresh_g:n,cured_g:o,label_g:i,lightest:r,size:l}=e.piece,d=r?"A bar on average, ":"",c=p=>d?d+p.toLowerCase():p;return s`<section class="piece" aria-labelledby="piece-title">
      <h2 id="piece-title">The piece</h2>
      ${F({key:"piece.fresh",label:c("Fresh"),shown:j(a.units,n),of:"piece.fresh_g"})}
      ${o===null?u:F({key:"piece.cured",label:c("Cured"),shown:j(a.units,o),of:"piece.cured_g"})}
      ${r?F({key:"piece.lightest",label:"The lightest bar",note:r.cured_g===null?"fresh":"cured",shown:j(a.units,r.cured_g??r.fresh_g),of:r.cured_g===null?"piece.fresh_g":"piece.cured_g"}):u}
      ${i===null?u:F({key:"piece.label",label:"Net weight for the label",shown:j(a.units,i,0),of:"piece.label_g"})}
      ${l?F({key:"piece.size",label:"Size for its box, w \xD7 d \xD7 h",shown:[`${[l.width_mm,l.depth_mm,l.height_mm].map(p=>R(p,0)).join(" \xD7 ")} mm`,""],of:"piece.size"}):u}
      ${t&&t.amount!==null?s`${F({key:"piece.cost",label:"Material cost of one piece",shown:[`${t.amount} ${t.currency}`,""],size:"weigh",note:`${t.total} ${t.currency} for the run`,of:"piece.cost.amount"})}
            ${t.unpriced.length?s`<p class="alarm">Unpriced, and not in this figure: ${t.unpriced.join(", ")}.</p>`:u}`:s`<p class="aside">No price of anything in it is given, so there is no cost.</p>`}
      ${tp(e)}
    </section>
    ${J$()} ${rb(yi(e))}`}function tp(e){let t=e.label;if(!t)return u;let n=(t.allergens??[]).filter(i=>i.named).map(i=>i.name),o=(i,r)=>r?s`<h3>${i}</h3>
          <p>${r}</p>`:u;return s`<details>
    <summary>Label draft, ${t.market}</summary>
    ${o("Net quantity",t.net_quantity?`${t.net_quantity.statement}: ${t.net_quantity.because}.`:"")}
    ${o("Ingredients, as saponified",t.as_saponified?.text)}
    ${o("Ingredients, as charged",t.as_charged?.text)} ${o("Allergens to name",n.join(", "))}
    <ul class="limits">
      ${(t.remarks??[]).map(i=>s`<li>${i.text}</li>`)}
    </ul>
  </details>`}var t1={mass:["g","oz"],temperature:["\xB0C","\xB0F"],minutes:["min"],length:["mm","in"],volume:["ml"]};function Qr({kind:e,unit:t}){let n=t1[e]??[];return t&&n.includes(t)?[t,...n.filter(o=>o!==t)]:n}var ab="degrees",n1=()=>localStorage.getItem(ab)??void 0,lb=e=>localStorage.setItem(ab,e);function np(e){return e.kind!=="temperature"?Qr(e)[0]:a.units!=="both"?a.units==="us"?"\xB0F":"\xB0C":n1()}function ub(e,t){let n=e.kind==="length"&&t?t.startsWith("-")?"below":"above":void 0,o=n?t.replace(/^[+-]\s*/,""):t,i=$t(o);return Qr(e).includes(i)?{number:o.slice(0,o.length-i.length).trim(),unit:i,side:n}:{number:o,side:n}}function db({number:e,unit:t,side:n}){let o=e.trim();if(!o)return"";let i=t&&Ue(o)?`${o} ${t}`:o;return n==="below"&&!/^[+-]/.test(i)?`-${i}`:i}function Sl({kind:e},{number:t,unit:n,side:o}){return e==="temperature"&&!n&&Ue(t)?"Is that in \xB0C or in \xB0F?":e==="length"&&o===void 0&&/[1-9]/.test(t)&&!/^\s*[+-]/.test(t)?"Above the line or below it?":void 0}var Ut,o1=(e,t)=>`note-${e}-${t.replaceAll(/[^\w]/g,"-")}`;function cb(e,t){let n=Jn(e.begun.id,t.key),o=o1(e.begun.id,t.key),i=n?.refused!==void 0;return s`<div class="blank ${i?"wants":""}" data-key=${t.key}>
    ${t.kind==="choice"?s`<p class="blank-words" id="${o}-label">${t.words}</p>`:s`<label class="blank-words" for=${o}>${t.words}</label>`}
    <div class="blank-value">${i1(e,t,o,n)}</div>
    <p class="blank-beside">
      ${t.planned?s`<span class="planned">planned <b>${t.planned}</b></span>`:u}
      ${d1(e,t,n)}
    </p>
    ${f1(e,t,o,n)}
  </div>`}function i1(e,t,n,o){if(t.kind==="choice")return u1(e,t,n,o);let i=pb(e,t,o),r=Qr(t).length>0||t.kind==="count",l=c=>op(e,t,{...i,number:c.target.value}),d=c=>{Bo(c),r1(e,t)};return s`<input
      id=${n}
      type=${t.kind==="date"?"date":"text"}
      inputmode=${t.kind==="count"?"numeric":r?"decimal":u}
      class=${r?"number":""}
      autocomplete="off"
      .value=${M(i.number)}
      aria-invalid=${o?.refused?"true":"false"}
      aria-describedby=${o?.refused||Sl(t,i)?`${n}-said`:u}
      @input=${l}
      @blur=${d}
      @keydown=${c=>c.key==="Enter"&&s1(c)}
    />
    ${a1(e,t,i)} ${l1(e,t,i)}`}function pb({begun:e},t,n){if(Ut?.batch===e.id&&Ut.key===t.key)return Ut.typed;if(n?.lacks)return{number:n.text,unit:t.kind==="temperature"?void 0:np(t)};let o=ub(t,n?n.value:t.noted??"");return{...o,unit:o.unit??np(t)}}function op(e,t,n,o=!1){Ut={batch:e.begun.id,key:t.key,typed:n},mb(e,t,n,o),Q()}function mb(e,t,n,o){let i=Sl(t,n)!==void 0;td(e,{key:t.key,text:n.number,value:db(n),is_left:o,lacks:i})}function r1(e,t){if(Ut?.batch!==e.begun.id||Ut.key!==t.key)return;let{typed:n}=Ut;Ut=void 0,mb(e,t,n,!0),Q()}function s1({target:e}){[...document.querySelectorAll(".blank :is(input, button)")].find(n=>n.compareDocumentPosition(e)&Node.DOCUMENT_POSITION_PRECEDING)?.focus()}function a1(e,t,n){let o=Qr(t);if(t.kind!=="temperature")return o.length?s`<span class="unit">${n.unit??o[0]}</span>`:u;let i=r=>{lb(r),op(e,t,{...n,unit:r},!0)};return fb(`Degrees: ${t.words}`,o,n.unit,i)}function l1(e,t,n){if(t.kind!=="length")return u;let o=i=>op(e,t,{...n,side:i},!0);return fb(`Side: ${t.words}`,["above","below"],n.side,o)}var fb=(e,t,n,o)=>s`<div class="choice" role="group" aria-label=${e}>
    ${t.map(i=>s`<button type="button" aria-pressed=${i===n?"true":"false"} @click=${()=>o(i)}>
          ${i}
        </button>`)}
  </div>`;function u1(e,t,n,o){let i=o?o.value:t.noted,r=l=>{Vn(e,t.key,l),B(l?`${t.words}: ${l}`:`${t.words}: taken back`)};return s`<div class="choice" role="group" id=${n} aria-labelledby="${n}-label">
    ${(t.choices??[]).map(l=>s`<button type="button" aria-pressed=${l===i?"true":"false"} @click=${()=>r(l)}>
          ${l}
        </button>`)}
    ${i?s`<button type="button" class="plain" @click=${()=>r("")}>Take back</button>`:u}
  </div>`}function d1({begun:e},t,n){if(n?.refused??n?.lacks)return s`<span class="stands not">✗ not noted</span>`;if(n)return s`<span class="stands waiting">… not kept yet</span>`;let o=Ut?.batch===e.id&&Ut.key===t.key;return t.noted!==void 0&&!(o&&!Ut.typed.number.trim())?s`<span class="stands kept">✓ noted ${m1(t.noted_at)}</span>`:u}var c1=new Intl.DateTimeFormat("en-GB",{hour:"2-digit",minute:"2-digit"}),p1=new Intl.DateTimeFormat("en-GB",{day:"numeric",month:"short"});function m1(e){if(!e)return"";let t=new Date(e);return(t.toDateString()===new Date().toDateString()?c1:p1).format(t)}function f1(e,t,n,o){if(o?.refused)return ip(o,`${n}-said`);let i=Sl(t,pb(e,t,o));return i?s`<p class="complaint" id="${n}-said">${i}</p>`:u}function ip(e,t){let{words:n,is_asked:o,noted:i}=e.refused,r=e.value||"nothing",l=i!==void 0;return s`<div class="blank-said" role="alert">
    <p class="complaint" id=${t}>${/^(is|was|makes|has|cannot) /.test(n)?`It ${n}`:n}.</p>
    ${o||l?s`<div class="row">
            ${l?s`<button type="button" @click=${()=>kh(e)}>Keep ${i||"it blank"}</button>`:u}
            <button type="button" @click=${()=>vh(e)}>
              ${l?`Note ${r} in its place`:`It is so: note ${r}`}
            </button>
          </div>`:u}
  </div>`}var Gr=e=>{let{beginning:t}=a.record;t&&Le({beginning:{...t,...e}})},hb=e=>Le({beginning:{batch:e,code:"",answers:{}},told:void 0}),rp=()=>Le({beginning:void 0}),gb=e=>Gr({code:e,complaint:void 0});async function sp(e){let{beginning:t}=a.record;if(!(!t||t.is_asking)){Gr({is_asking:!0,complaint:void 0});try{a.run.shipped&&await Ln(a.run),await Pt(),await h1(t,e)}catch(n){if(!(n instanceof y))throw n;Gr({complaint:n.complaint}),B(`Not begun: ${n.complaint.problem}`)}finally{Gr({is_asking:!1})}}}async function h1({batch:e,code:t,answers:n},o){let i=a.run.file,r=Po(e)!==void 0,l=await gh({run:i,batch:e,seen:o,code:t.trim()||void 0,again:r,...n}),[d]=l.record.batches;Le({run:i,beginning:void 0,told:{batch:d.begun.id,remarks:(l.record.remarks??[]).map(c=>c.text)}}),Xs(l,i),B(`The record is begun: ${d.begun.code}`),ia(d,So(e)),await bn()}async function _b(e,t){let{beginning:n}=a.record;if(!n)return;let{answers:o}=n,i=r=>{let l=e[r];return l===void 0?o[r]:[...o[r]??[],l]};Gr({answers:{confirmed:i("confirmed"),lot:i("lot"),"beyond-stock":i("beyond-stock")}}),await sp(t)}var ap=(e,t)=>Le({code:{batch:e,text:t}}),Al=()=>Le({code:void 0});async function $b(){let{code:e,run:t}=a.record;if(!e?.text.trim())return Al();try{let n=crypto.randomUUID();Xs(await Qs({run:t,batch:e.batch,act:n,code:e.text.trim()}),t),Al()}catch(n){if(!(n instanceof y))throw n;Le({code:{...e,complaint:H(n.complaint)}})}}var Yr="batch-code";function Dl({begun:e}){let{code:t}=a.record,n=t?.batch===e.id,o=()=>{ap(e.id,e.code),z(L(Yr))};return s`<div class="batch-code">
    <p><span class="aside">On the mould:</span> <b class="code">${e.code}</b></p>
    ${n?s`<div class="row">
            <div class="field ${t.complaint?"wants":""}">
              <label for=${Yr}>Another code</label>
              <input
                id=${Yr}
                autocomplete="off"
                .value=${M(t.text)}
                aria-describedby=${t.complaint?`${Yr}-said`:u}
                @input=${i=>ap(e.id,i.target.value)}
              />
            </div>
            <button type="button" class="strong" @click=${()=>{$b()}}>Use this code</button>
            <button type="button" @click=${Al}>Leave it</button>
            ${t.complaint?s`<p class="complaint" id="${Yr}-said">${t.complaint}</p>`:u}
          </div>`:s`<button type="button" @click=${o}>Change the code</button>`}
  </div>`}var Zr;function g1(){let e=new Date;return[e.getFullYear(),e.getMonth()+1,e.getDate()].map(t=>String(t).padStart(2,"0")).join("-")}var up=e=>`cured.${e}`;function bb(e,t){let{id:n}=e.begun,o=Zr?.batch===n?Zr:{batch:n,day:g1(),pieces:"",weight:""},i=e.cured??[],r=i.find(({on:d})=>d===o.day),l=o.day!==""&&o.pieces.trim()!==""&&o.weight.trim()!=="";return s`<div class="blank cure" data-key=${t.key}>
    <p class="blank-words">
      Weighed while it cures ${t.planned?s`<small>planned, cured: ${t.planned}</small>`:u}
    </p>
    ${$1(n).map(b1)}
    ${i.length?s`<ul class="weighings">
            ${i.map(d=>y1(e,d))}
          </ul>`:s`<p class="aside">None noted yet.</p>`}
    <div class="row">
      ${lp("Day","cure-day","date",o.day,d=>({...o,day:d}))}
      ${lp("Pieces","cure-pieces","numeric",o.pieces,d=>({...o,pieces:d}))}
      ${lp(`Weight together, ${t.unit??"g"}`,"cure-weight","decimal",o.weight,d=>({...o,weight:d}))}
      <button type="button" ?disabled=${!l} @click=${()=>_1(e,t,o)}>
        ${r?"Put it in its place":"Note this weighing"}
      </button>
    </div>
    ${r?s`<p class="hint">Noted of ${oe(r.on)} already: ${ta(r)}.</p>`:u}
  </div>`}var lp=(e,t,n,o,i)=>s`<div class="field short">
    <label for=${t}>${e}</label>
    <input
      id=${t}
      type=${n==="date"?"date":"text"}
      inputmode=${n==="date"?u:n}
      autocomplete="off"
      .value=${M(o)}
      @input=${r=>{Zr=i(r.target.value),Q()}}
    />
  </div>`;function _1(e,{unit:t="g"},n){let o=Ue(n.weight)?`${n.weight.trim()} ${t}`:n.weight.trim(),i=n.pieces.trim(),r=`${i} ${i==="1"?"piece":"pieces"}, ${o}`;Vn(e,up(n.day),r),B(`Weighing of ${oe(n.day)}: ${r}`),Zr=void 0,Q(),z(L("cure-pieces"))}var $1=e=>a.record.acts.filter(t=>t.batch===e&&t.key.startsWith("cured.")),b1=e=>{let t=oe(e.key.slice(6));return e.refused?s`<p><b>${t}</b> <span class="stands not">✗ not noted</span></p>
        ${ip(e,`said-${e.id}`)}
        <div class="row"><button type="button" @click=${()=>w1(e)}>Correct it</button></div>`:s`<p><b>${t}</b>: ${e.value||"taken back"} <span class="stands waiting">… not kept yet</span></p>`};function w1({batch:e,key:t,value:n}){let[,o="",i=""]=/^\s*(\S+) pieces?, (.*)$/.exec(n)??[];Zr={batch:e,day:t.slice(6),pieces:o,weight:i},Q(),z(L("cure-pieces"))}function y1(e,t){let n=Jn(e.begun.id,up(t.on));return s`<li>
    <span><b>${oe(t.on)}</b>: ${ta(t)} <span class="stands kept">✓ noted</span></span>
    ${n?u:s`<button
            type="button"
            aria-label="Take back the weighing of ${oe(t.on)}"
            @click=${()=>Vn(e,up(t.on),"")}
          >
            Take back
          </button>`}
  </li>`}function wb(){let{batches:e}=a.record;if(e.length<2)return u;let t=ea();return s`<ul class="makings" aria-label="Batches of this run">
    ${[...e].reverse().map(n=>v1(n,n.begun.id===t?.begun.id))}
  </ul>`}function v1(e,t){let{id:n,code:o}=e.begun,i=oa(n);return s`<li>
    <button type="button" aria-pressed=${t?"true":"false"} @click=${()=>mr(n)}>
      <b>${o}</b> <span>${dp(e)}</span>
      <small>${Xr(e)}; ${V(e.noted,"blank")} noted${i?`; ${i} not taken`:""}</small>
    </button>
  </li>`}function dp({number:e,begun:t}){let{of:n=1}=a.record;return`${n>1||e>1?`batch ${e} of ${Math.max(n,e)}, `:""}${V(t.pieces,"piece")}, begun ${oe(t.begun_on)}`}var Xr=({for_sale:e,not_for_sale_because:t=""})=>e?"For sale":`Not for sale: ${bt(t)}`;function yb(e,t){let{number:n,begun:o}=e,i=a.bench.run===a.record.run?En(n):void 0,r=i&&new Date(i.begun_at)<=new Date(o.begun_at)?So(n):"";return!r||na(e,t.key)||Jn(o.id,t.key)?u:s`<p class="read-at-weights">
    <button type="button" @click=${()=>Vn(e,t.key,r)}>
      Note ${r}, as read at the weights
    </button>
  </p>`}function vb(e){Zs();let t=ea();return s`<section class="record" aria-labelledby="run-title">
    <h1 id="run-title" tabindex="-1">${a.plan?.run??String(a.run.now.name??"")}</h1>
    ${k1()} ${wb()} ${t?T1(t):x1(e)}
  </section>`}function k1(){let{failed:e,unsent:t,acts:n}=a.record,o=t!==void 0&&n.some(i=>!i.refused);return s`<div role="status">
    ${e!==void 0?s`<p class="alarm"><strong>What is recorded could not be read:</strong> ${e}.</p>`:u}
    ${o?s`<p class="alarm">
            <strong>Not kept yet:</strong> ${t}. What you type is kept in this browser, and sent as soon as the
            program answers.
          </p>`:u}
  </div>`}function x1(e){return a.record.version===void 0?s`<p class="hint">${a.record.failed===void 0?"Reading ...":""}</p>`:s`<p>No batch of this run is recorded yet. Its record begins when its lye is mixed, at the weights.</p>
    <p><button type="button" class="strong" @click=${e}>To the weights</button></p>`}function T1(e){let{blanks:t}=e;return s`<div class="record-head">
      ${Dl(e)}
      <p>${dp(e)}</p>
      <p class="sale ${e.for_sale?"is":""}">
        <span aria-hidden="true">${e.for_sale?"\u2713":"\u2717"}</span> <b>${Xr(e)}</b>
      </p>
    </div>
    ${t?D1(e,t):s`<p class="hint">Reading ...</p>`}`}var R1={day_before:"Cast beforehand",base_mixed:"Mixing",poured:"Pouring",topping_mixed:"Mixing",whipped:"Whipping",piped:"Piping",afterwards:"Pieces and time"},S1="unmoulded_on",cp="Cure and test";function A1(e){let t=[];for(let n of e){let o=t.at(-1),r=n.key===S1||o?.title===cp?cp:R1[n.when],l=n.of??"";o?.title===r&&o.of===l?o.blanks.push(n):t.push({title:r,of:l,blanks:[n]})}return t}function D1(e,t){let n=A1(t);return s`<nav class="parts-of-record" aria-label="Parts of the record">
      ${n.map((o,i)=>s`<button type="button" @click=${()=>P1(i)}>${kb(o)}</button>`)}
    </nav>
    ${n.map((o,i)=>O1(e,o,i))}`}var kb=({title:e,of:t})=>t?`${e}: ${t}`:e,pp=e=>`record-part-${e}`;function P1(e){let t=document.getElementById(pp(e));t?.focus({preventScroll:!0}),t?.scrollIntoView({block:"start"})}var O1=(e,t,n)=>s`<section class="record-part" aria-labelledby=${pp(n)}>
    <h2 id=${pp(n)} tabindex="-1">${kb(t)}</h2>
    ${t.title===cp?M1(e):u} ${t.blanks.map(o=>B1(e,o))}
  </section>`,M1=({for_sale:e})=>e?u:s`<p class="aside">
        Nothing is for sale without a test: note how it was tested and what came of it, then the day from which it is
        ready, or why it is held back.
      </p>`,B1=(e,t)=>t.kind==="weighing"?bb(e,t):s`${cb(e,t)} ${nd(t)?yb(e,t):u}`;var[Tb,fp]=[440,270],[es,mp,Pl,Oi]=[64,Tb-10,10,fp-52],F1=6,C1=8;function xb(e){let t=e/F1,n=10**Math.floor(Math.log10(t)),o=[1,2,5,10].map(i=>i*n).find(i=>i>=t);return Array.from({length:Math.floor(e/o+1e-9)+1},(i,r)=>r*o)}var Mi=e=>R(e,1);function Rb(e,t){let n=e.at(-1)?.depth_mm??1,o=e.at(-1)?.volume_ml??1,i=d=>Mi(es+(mp-es)*d/n),r=d=>Mi(Oi-(Oi-Pl)*d/o),l=e.map(({depth_mm:d,volume_ml:c})=>`L${i(d)} ${r(c)}`).join("");return s`<svg
      class="level-curve"
      viewBox="0 0 ${Tb} ${fp}"
      role="img"
      aria-label="Level curve: volume by depth, with the pour line at ${t} millimetres"
    >
      ${xb(n).map(d=>S`<path class="grid" d="M${i(d)} ${Pl}V${Oi}" />
            <text x=${i(d)} y=${Oi+20} text-anchor="middle">${Mi(d)}</text>`)}
      ${xb(o).map(d=>S`<path class="grid" d="M${es} ${r(d)}H${mp}" />
            <text x=${es-8} y=${r(d)} text-anchor="end" dominant-baseline="middle">${Mi(d)}</text>`)}
      ${S`<text x=${(es+mp)/2} y=${fp-6} text-anchor="middle">depth, mm</text>
        <text transform="translate(16 ${(Pl+Oi)/2}) rotate(-90)" text-anchor="middle">volume, ml</text>
        <path class="curve" d="M${i(0)} ${r(0)}${l}" />
        <path class="pour-line" d="M${i(t)} ${Pl}V${Oi}" />`}
    </svg>
    ${L1(e)}`}function L1(e){let t=Math.max(1,Math.round(e.length/C1)),n=e.filter((o,i)=>(i+1)%t===0);return s`<details>
    <summary>The curve as a table</summary>
    <table class="levels">
      <caption>
        What one cavity holds to a depth
      </caption>
      <thead>
        <tr>
          <th scope="col">Depth, mm</th>
          <th scope="col">Volume, ml</th>
          <th scope="col">One millimetre more, ml</th>
        </tr>
      </thead>
      <tbody>
        ${n.map(({depth_mm:o,volume_ml:i,ml_per_mm:r})=>s`<tr>
              <th scope="row">${Mi(o)}</th>
              <td>${Mi(i)}</td>
              <td>${R(r,2)}</td>
            </tr>`)}
      </tbody>
    </table>
  </details>`}var Ol=Math.PI/8,I1=500,hp=class extends HTMLElement{#n=[];#e=0;#t;#i=!1;#o=!1;#r="";#s=!1;#l="";#a="Drawing ...";#d=0;#m=!1;#f=new ResizeObserver(()=>this.#t?.fit());#h=new IntersectionObserver(([t])=>this.#$(t.isIntersecting),{rootMargin:"400px"});set views(t){this.#n=t,this.#g()}connectedCallback(){this.#u(),this.#h.observe(this)}disconnectedCallback(){window.clearTimeout(this.#d),this.#h.disconnect(),this.#f.disconnect(),this.#t?.end(),this.#t=void 0,this.#l="",URL.revokeObjectURL(this.#r)}#$(t){this.#m=t,t&&requestIdleCallback(()=>{this.#b()},{timeout:1500})}async#b(){if(this.#t||this.#o)return this.#g();let t=this.querySelector("canvas");if(!(!this.isConnected||!t||this.#i)){this.#i=!0;try{let{Turntable:n}=await import("./solid_view-3BHCV7RK.js");this.#t=new n(t),this.#f.observe(t)}catch{this.#o=!0}this.#i=!1,this.#u(),await this.#p()}}#g(){let t=this.#t||this.#o;!this.#m||!t||this.#c()===this.#l||(window.clearTimeout(this.#d),this.#d=window.setTimeout(()=>{this.#p()},I1))}#c(){let{of:t}=this.#n[this.#e],n=this.#o?"plan"in t?"piece":"picture":"glb",[o,i]=Object.entries(t)[0];return JSON.stringify({kind:n,[o]:this.#s&&!this.#o?{...i,"cut-open":!0}:i})}async#p(){let t=this.#c();if(t!==this.#l){try{let n=await Jt(JSON.parse(t));if(t!==this.#c()||!this.isConnected)return;this.#o?(URL.revokeObjectURL(this.#r),this.#r=URL.createObjectURL(n)):this.#t?.show(li(await n.arrayBuffer())),this.#l=t,this.#a=""}catch(n){if(!(n instanceof y))throw n;this.#a=n.message}this.#u()}}#_(t){t(),this.#a="Drawing ...",this.#u(),this.#p()}#u(){let t=s`<div class="choice" role="group" aria-label="What to look at">
      ${this.#n.map((o,i)=>s`<button
            type="button"
            aria-pressed=${i===this.#e?"true":"false"}
            @click=${()=>this.#_(()=>this.#e=i)}
          >
            ${o.words}
          </button>`)}
    </div>`,n=s`<p class="aside" role="status">${this.#a}</p>`;ht(s`${t} ${this.#o?this.#y():this.#w()} ${n}`,this)}#w(){let t=i=>()=>this.#t?.turn(i),n=i=>()=>this.#t?.tip(i),o=()=>this.#_(()=>this.#s=!this.#s);return s`<canvas
        role="img"
        aria-label="${this.#n[this.#e]?.words??""} as a solid; turn it with the buttons below."
      ></canvas>
      <div class="choice">
        <button type="button" @click=${t(-Ol)}>Turn left</button>
        <button type="button" @click=${t(Ol)}>Turn right</button>
        <button type="button" @click=${n(Ol)}>From above</button>
        <button type="button" @click=${n(-Ol)}>From below</button>
        <button type="button" aria-pressed=${this.#s?"true":"false"} @click=${o}>Cut open</button>
      </div>`}#y(){return s`<p class="aside">This browser shows no solids; here is the drawing.</p>
      ${this.#r?s`<img
              src=${this.#r}
              alt="${this.#n[this.#e].words}, drawn to scale with its measures"
            />`:u}`}};customElements.define("solid-panel",hp);function Sb(e){let{measured:t}=a;if(!t)return s`<p role="status">${a.measuring_failed??"Measuring the mould ..."}</p>`;let n=t.gauge.pockets[0],o=t.gauge.notes;return s`<section class="mould" aria-labelledby="mould-title">
    <h2 id="mould-title">The mould <small>${e.pour.mould}</small></h2>
    ${F({key:"mould.brimful",label:"To the brim",note:`${O(Se(a.units,n.brim_mm-n.floor_mm))} deep, ${t.gauge.pockets.length} ${t.gauge.pockets.length===1?"cavity":"cavities"}`,shown:De(a.units,n.brimful_ml),of:"pockets.0.brimful_ml",working:t.gauge.how.find(i=>i.of==="pockets.0.brimful_ml")})}
    <div class="beside">
      <figure>
        <figcaption>Volume by depth; the dashed line is the pour line</figcaption>
        ${Rb(n.levels,e.pour.depth_mm)}
      </figure>
      <figure>
        <figcaption>3D view</figcaption>
        <solid-panel .views=${W1(e,t.mould)}></solid-panel>
      </figure>
    </div>
    ${o.length?s`<ul class="limits">
            ${o.map(i=>s`<li>${i.text}</li>`)}
          </ul>`:u}
  </section>`}function W1(e,t){let n={words:"The mould, filled",of:{gauge:{file:t,"below-brim":`${e.pour.below_brim_mm} mm`}}},o={words:"The whole piece",of:{plan:{file:a.run.file,run:a.run.now}}};return e.pipe||e.decorations?.length||e.pour.layers?.length?[o,n]:[n,o]}var E1=e=>e.batches.flatMap(t=>t.numbers.map(n=>({number:n,one:t}))).sort((t,n)=>t.number-n.number);function Ab(e){let{batch:t}=a.printing;return Ne(e)&&t<=e.pieces.batches?t:0}function N1(e){if(!Ne(e))return u;let t=Ab(e),n=i=>Eo({batch:Number(i.target.value)}),o=(i,r)=>s`<option value=${i} .selected=${M(i===t)}>${r}</option>`;return s`<div class="row">
    <div class="field choose">
      <label for="sheet-batch">The sheet is for</label>
      <select id="sheet-batch" @change=${n}>
        ${o(0,"the whole run")}
        ${E1(e).map(({number:i,one:r})=>o(i,`batch ${i} of ${e.pieces.batches}: ${Nt(e,r)}`))}
      </select>
    </div>
  </div>`}function Db(e){let{paper:t}=a.printing,n=so(a.run.file),o={file:a.run.file,run:a.run.now},i=a.measured?.mould,r={file:i,"below-brim":`${e.pour.below_brim_mm} mm`},l=Ab(e),d={plan:o,paper:t,...l?{batch:String(l)}:{}};return s`<section class="out" aria-labelledby="out-title">
    <h2 id="out-title">Print and download</h2>
    <h3>The sheet for the bench</h3>
    ${ul()} ${N1(e)}
    <div class="choice">
      ${dn({words:"Bench sheet",kind:"sheet",file:`${n}${l?` batch ${l}`:""}`,of:d},"strong")}
    </div>
    <h3>For the label, the wall and the printer</h3>
    <div class="choice">
      ${e.label?Ke("Label draft",Xe(`${n} label.txt`,{kind:"label",plan:o})):""}
      ${Ke("Drawing of the pour, true size",Xe(`${n} pour.svg`,{kind:"picture",plan:o}))}
      ${Ke("Drawing of the piece",Xe(`${n}.svg`,{kind:"piece",plan:o}))}
      ${Ke("Whole piece, GLB (3D viewer)",Xe(`${n}.glb`,{kind:"glb",plan:o}))}
      ${Ke("Whole piece, STL (3D printing)",Xe(`${n}.stl`,{kind:"stl",plan:o}))}
      ${i?s`${Ke("Filled cavity, GLB (3D viewer)",Xe(`${n} cavity.glb`,{kind:"glb",gauge:r}))}
            ${Ke("Cavity, STL (3D printing)",Xe(`${n} cavity.stl`,{kind:"stl",gauge:{file:i}}))}`:""}
    </div>
    <p role="status">
      ${ro()||`The drawing has the pour line ${O(Se(a.units,e.pour.below_brim_mm))} below the brim.`}
    </p>
  </section>`}var Pb=e=>Db(e);var Ae={at:"/decorations"},Bi=e=>`${Ae.at}/${e}`,ao=e=>A("run",`${Bi(e)}/name`).trim()||`Decoration ${e+1}`,et=()=>$(a.run.now,"/cut")!==void 0,jo=e=>["mould","rod","drizzle","bought"].find(t=>g("run",`${e}/${t}`)!==void 0),ts=e=>["per_piece","per_cast"].find(t=>g("run",`${e}/${t}`)!==void 0);var mt="/batch",Ob=e=>`${e}/moulds_owned`;function gp(){return D({name:"batches",pointers:[mt],summary:`Batches${j1()}`,body:()=>s` <p class="hint">What you leave blank sets no limit. Pots, bowl and moulds owned stand in your studio.</p>
        ${I("run",mt)}
        <div class="row">${H1()} ${U1()}</div>
        ${T({question:"Cavities at each filling",at:mt,asked_at:`${mt}/fill`,chosen:g("run",`${mt}/fill`)==="full"?"full":"needed",answers:[["needed","As many as are needed"],["full","All of them, the rest to stock"]],puts:e=>Mb("fill",e==="full"?e:void 0)})}`})}function j1(){let[e,t]=[`${mt}/pieces`,`${mt}/casts`].map(o=>A("run",o)),n=[e&&`at most ${e} in a batch`,t&&`at most ${t} casts in a batch`].filter(Boolean);return n.length?`: ${n.join(", ")}`:""}function Mb(e,t){let n=fe("run",mt,[e]),o=t===void 0?n:{...n,[e]:t};return Object.keys(o).length?o:void 0}function H1(){let e=g("run",`${mt}/casts`)!==void 0,t=(n,o)=>f({label:o,at:`${mt}/${n}`,count:!0,optional:!0,takes_part:!0,short:!0,term:"batch"});return et()?g("run",`${mt}/pieces`)!==void 0?s`${t("pieces","Most bars in a batch")}
        <button type="button" @click=${q1}>Count loaves instead</button>`:t("casts","Most loaves in a batch"):e?t("casts","Most casts in a batch"):t("pieces","Most pieces in a batch")}function q1(){E("run","Counted in loaves",mt,Mb("pieces",void 0))}function U1(){let e=`${mt}/whippings`;return!ut()&&g("run",e)===void 0?u:f({label:"Whippings a batch",at:e,count:!0,optional:!0,takes_part:!0,short:!0,hint:"Each weighed out by itself; else one."})}var z1={piece:{per_piece:""},surface:{on_covered_surface:"",coverage:"",share_that_sticks:""}},Tt={at:"/dust"},Ml=e=>A("run",`/dust/${e}/name`).trim()||`Dust ${e+1}`;function Bb(){le("set-up dust"),N(Tt,{name:""},"Dust")}function J1(e){return g("run",`${e}/per_piece`)!==void 0?"piece":g("run",`${e}/on_covered_surface`)===void 0?void 0:"surface"}function Fb(e){let t=`/dust/${e}`,n=J1(t),o=Ml(e),i=r=>({...fe("run",t,["per_piece","on_covered_surface","coverage","share_that_sticks"]),...z1[r]});return s` ${f({label:"Which powder",at:`${t}/name`})}
  ${T({question:"How much of it?",at:t,chosen:n,answers:[["piece","Weighed for one piece"],["surface","By the surface it covers"]],puts:i})}
  ${n==="piece"?f({label:`${o}, for one piece`,at:`${t}/per_piece`,unit:"g",hint:"What misses it included."}):u}
  ${n==="surface"?s`<div class="row">
            ${f({label:"Powder on the covered surface",at:`${t}/on_covered_surface`,unit:"mg/cm2",short:!0})}
            ${f({label:"Share of the surface covered",at:`${t}/coverage`,unit:"%",short:!0})}
            ${f({label:"Share of the powder that sticks",at:`${t}/share_that_sticks`,unit:"%",short:!0})}
          </div>
          <p class="hint">
            The surface is all exposed surface of the piece in its mould: topping, decoration, level batter.
          </p>`:u}
  ${to("run",t,o)}`}var K1={"by number":{},on_top:{on_top:{pressed_in:""}},buried:{buried:{cover:""}}};function V1(e){return["on_top","buried"].find(t=>g("run",`${e}/${t}`)!==void 0)??"by number"}function Cb(e,t){let n=V1(e),o=i=>({...fe("run",e,["on_top","buried"]),...K1[i]});return jo(e)==="drizzle"?s`<p class="aside">A drizzle lies on the surface it covers.</p>`:jo(e)==="bought"?s`<p class="aside">What is bought is counted; where it sits is not checked.</p>`:D({name:`${e} where`,pointers:[`${e}/on_top`,`${e}/buried`],summary:"Where it goes",body:()=>s` ${T({question:"Where does it go?",at:e,is_told_elsewhere:!0,chosen:n,answers:[["on_top","On top, pressed in"],["buried","Buried in the pour"],["by number","Not placed, only counted"]],puts:o})}
      ${n==="on_top"?Q1(`${e}/on_top`):n==="buried"?Y1(e,t):s`<p class="aside">It is counted and weighed; its position is not checked.</p>`}`})}function Q1(e){return s`<div class="row">
      ${f({label:"Pressed into the top",at:`${e}/pressed_in`,unit:"mm"})}
      ${f({label:"Flat of the peak, across",at:`${e}/peak_flat`,unit:"mm",optional:!0})}
    </div>
    <p class="hint">
      Pressed in 0 mm, it is only set down. The flat of the peak is what it stands on, if you measured it.
    </p>
    ${Lb(e,"It is turned")}`}function Lb(e,t){let n=o=>f({label:`About ${o}`,at:`${e}/turn/${o}`,unit:"deg",optional:!0,short:!0});return D({name:`${e} turn`,pointers:[`${e}/turn`],summary:t,body:()=>s` <div class="row">${["x","y","z"].map(n)}</div>
        <p class="hint">Degrees about its middle, x first, from how it was cast. A rod lies along x.</p>`})}var G1=[["level","Find places: upright, at one height"],["layered","Find places: upright, in several levels"],["free","Find places: turned any way"],["said","I say where"]];function Y1(e,t){let n=`${e}/buried`,o=t===k(Ae).findIndex(l=>l.buried!==void 0),i=g("run",`${n}/places`)!==void 0?"said":g("run",`${n}/arrange`),r=g("run",`${n}/placed`);return s`${I("run",n)}
  ${f({label:"Cover wanted all round",at:`${n}/cover`,unit:"mm",hint:"Batter between the embed and wall, floor, pour line and the next one.",term:o?"embed":void 0})}
  ${T({question:"When is it set in?",at:`${n}/placed`,chosen:r,answers:[["before the pour","Before the pour"],["pressed in after","Pressed in after"]],puts:l=>l,hint:"Pressed in, it stays where it is once the batter is at a firm trace.",term:o?"trace":void 0})}
  ${T({question:"Where in the pour?",at:e,asked_at:`${n}/arrange`,chosen:i,answers:G1,puts:l=>X1(e,l)})}
  ${i==="said"?tA(e,t):u}`}var Z1=()=>s`<svg
    class="places"
    viewBox="0 0 216 84"
    role="img"
    aria-label="From above, x is counted from the middle to the right and y to the back; from the side, the height from the floor to its lowest point."
  >
    ${S`<g class="axes"><path d="M10 14H94V70H10Z M52 42H76M76 42V26M52 14V70M10 42H94" />
      <path d="M122 20L130 70H198L206 20M178 70V52" /></g>
    <circle class="shaded decorate" cx="76" cy="26" r="7" /><circle class="shaded decorate" cx="178" cy="45" r="7" />
    <text x="60" y="52">x</text><text x="80" y="40">y</text><text x="182" y="65">height</text>
    <text x="10" y="82">from above</text><text x="130" y="82">from the side</text>`}
  </svg>`,Ib={x:"",y:"",height:""};function X1(e,t){let n=fe("run",`${e}/buried`,["arrange","places"]);if(t!=="said")return{...g("run",e),buried:{...n,arrange:t}};let o=Number(g("run",`${e}/${ts(e)}`)),i=Array.from({length:o>=1&&o<=50?o:1},()=>Ib);return{...fe("run",e,["per_piece","per_cast"]),[Wb(e)]:i.length,buried:{...n,places:i}}}var Wb=e=>et()?"per_cast":ts(e)??"per_piece";function eA(e){let t=(n,o)=>{let i=["per_piece","per_cast"].reduce((r,l)=>P(r,`${e}/${l}`,void 0),n);return P(i,`${e}/${Wb(e)}`,o)};return{at:`${e}/buried/places`,least:1,and:t}}function tA(e,t){let n=eA(e),o=k(n);return s`${Z1()}
    <p class="hint">
      x: right of the middle; y: behind it; either below zero for the other side. Height: of its lowest point above the
      floor.
    </p>
    ${o.map((i,r)=>{let l=`${n.at}/${r}`,d=c=>f({label:`Place ${r+1}: ${c}`,at:`${l}/${c}`,unit:"mm",short:!0});return s`<div class="part" id=${C(n,r)} role="group" aria-label="Place ${r+1} of ${ao(t)}">
        ${I("run",l)}
        <div class="row">
          ${d("x")} ${d("y")} ${d("height")} ${U(n,r,`place ${r+1} of ${ao(t)}`)}
        </div>
        ${Lb(l,`Place ${r+1} is turned`)}
      </div>`})}
    ${G(n,"Add a place",()=>N(n,Ib,"Place"))}
    <p class="aside">${o.length} in each.</p>`}var Nb=e=>`${e} made`;function nA(){let e=Bi(k(Ae).length),t=et()?{}:{per_piece:""};le("set-up decorate");for(let n of[Nb(e),`${e} where`])Ee("run",n);N(Ae,{name:"",material:"",...t,density:"",spares:"",melt_loss:"",left_in_jug:""},"Decoration")}function jb(){let[e,t]=[k(Ae).length>0,k(Tt).length>0];return s`${G(Ae,e?"Add another decoration":"Add a decoration",nA)}
  ${G(Tt,t?"Add another dust":"Add a dust",Bb)}`}function Hb(e){let t=Bi(e);return s` ${I("run",t)} ${aA(t)}
    <div class="row">
      ${iA(t)} ${f({label:"Spares",at:`${t}/spares`,unit:"%",short:!0})}
      ${jo(t)==="bought"?u:oA(t)}
    </div>
    ${Cb(t,e)} ${to("run",t,ao(e))}`}var oA=e=>s`${f({label:"Lost in melting",at:`${e}/melt_loss`,unit:"%",short:!0})}
  ${f({label:"Left in the jug per tray fill",at:`${e}/left_in_jug`,unit:"g",short:!0})}
  ${f({label:"Density when set",at:`${e}/density`,unit:"g/ml",short:!0})}`;function iA(e){let t=ts(e),n=X("run",`${e}/buried/places`).length;if(n&&n===g("run",`${e}/${t}`)&&!(et()&&t==="per_piece"))return s``;let o=t==="per_cast"?et()?"In each loaf":"In each cast":et()?"On each bar":"On each piece",i=r=>({...fe("run",e,["per_piece","per_cast"]),[r]:t?g("run",`${e}/${t}`):""});return s`${et()?T({question:"Counted by",at:e,is_told_elsewhere:!0,chosen:t,answers:[["per_piece","Bar"],["per_cast","Whole loaf"]],puts:i}):u}
  ${t?f({label:o,at:`${e}/${t}`,count:!0,short:!0}):u}`}var rA={mould:{mould:"",fill:{below_brim:""}},rod:{rod:{diameter:"",length:""}},drizzle:{drizzle:{area:"",thickness:""}},bought:{bought:{}}},Eb={density:"",melt_loss:"",left_in_jug:""};function sA(e,t){let n=["mould","moulds_owned","fill","cast_as","rod","drizzle","bought",...t==="drizzle"||t==="bought"?["on_top","buried"]:[],...t==="bought"?[...Object.keys(Eb),"time_per_tray_fill"]:[]],o=jo(e)==="bought"&&t!=="bought"?Eb:{};return{...fe("run",e,n),...o,...rA[t]}}function aA(e){let t=jo(e),n=["name","material","mould","moulds_owned","fill","cast_as","rod","drizzle","bought","time_per_tray_fill"].map(o=>`${e}/${o}`);return D({name:Nb(e),pointers:n,summary:"What it is and how it is made",is_needed:!t,body:()=>s` <div class="row">
          ${f({label:"What it is called",at:`${e}/name`})}
          ${f({label:t==="bought"?"What is bought":"What is melted for it",at:`${e}/material`})}
        </div>
        <p class="hint">${t==="bought"?"It has a price by the piece.":"The price goes by what is melted."}</p>
        ${T({question:"How is it made?",at:e,is_told_elsewhere:!0,chosen:t,answers:[["mould","Cast in a mould"],["rod","A round rod, cut to length"],["drizzle","Drizzled over"],["bought","Bought, and only counted"]],puts:o=>sA(e,o)})}
        ${t?lA[t](e):u}
        ${t==="bought"?u:f({label:"To fill all trays once, setting included",at:`${e}/time_per_tray_fill`,unit:"min",optional:!0})}`})}var lA={mould:uA,rod:e=>s`<div class="row">
      ${f({label:"Rod, diameter",at:`${e}/rod/diameter`,unit:"mm",short:!0})}
      ${f({label:"Rod, length",at:`${e}/rod/length`,unit:"mm",short:!0})}
    </div>`,drizzle:e=>s`<div class="row">
      ${f({label:"Area covered",at:`${e}/drizzle/area`,unit:"cm2",short:!0})}
      ${f({label:"Thickness",at:`${e}/drizzle/thickness`,unit:"mm",short:!0})}
    </div>`,bought:e=>f({label:"One weighs",at:`${e}/bought/weighs`,unit:"g",optional:!0,short:!0,hint:"Weigh ten. A label needs it."})};function uA(e){let t=g("run",`${e}/fill/depth`)===void 0?"below_brim":"depth";return s`${$i("Cast in",`${e}/mould`,a.files?.moulds)}
  ${T({question:"Filled to a line",at:`${e}/fill`,chosen:t,answers:[["below_brim","below the brim"],["depth","above the floor"]],puts:n=>({[n]:""})})}
  ${t==="below_brim"?f({label:"Filled to, below the brim",at:`${e}/fill/below_brim`,unit:"mm",hint:"0 mm is level full."}):f({label:"Filled to, above the floor",at:`${e}/fill/depth`,unit:"mm"})}
  ${T({question:"What makes one?",at:`${e}/cast_as`,chosen:g("run",`${e}/cast_as`),answers:[["one cast","One cast"],["two halves","Two halves, joined at the flat"]],puts:n=>n})}`}var Rt=()=>a.plan?.piece.cost?.materials.map(e=>e.name)??[],ee=e=>a.fats.find(t=>t.id===e)?.name??e,_p=8;function Ho({key:e,label:t,offers:n,among:o,taken:i,take:r}){let l=`find-${e}`,d=a.finding?.key===e?a.finding.text:"",c=(d.trim()?dA(d,o):n).filter(w=>!i(w)),p=w=>{h({finding:void 0}),r(w)},m=d.trim(),_=m!==""&&!i(m)&&!c.some(w=>qe(ee(w))===qe(m)),b=()=>{if(!m)return;let w=c.find(K=>qe(ee(K))===qe(m)||qe(K)===qe(m)),x=c.length===1?c[0]:void 0;(w??x??_)&&p(w??x??m)};return s`<div class="picker" role="group" aria-labelledby="${l}-label">
    <p class="question" id="${l}-label">${t}</p>
    <div class="field">
      <label for=${l}>Find it by its name</label>
      <input
        id=${l}
        .value=${d}
        @input=${w=>h({finding:{key:e,text:w.target.value}})}
        @keydown=${w=>{w.key==="Enter"&&b()}}
        autocomplete="off"
        spellcheck="false"
      />
    </div>
    <div class="choice">
      ${c.slice(0,_p).map(w=>s`<button type="button" @click=${()=>p(w)}>${ee(w)}</button>`)}
      ${_?s`<button type="button" @click=${()=>p(m)}>Add "${m}"</button>`:u}
    </div>
    ${c.length>_p?s`<p class="hint">${c.length-_p} more: type a part of the name.</p>`:u}
  </div>`}function dA(e,t){let n=t?[]:Rt(),o=qe(e).split(/\s+/).filter(Boolean),i=a.fats.filter(l=>vn(l,e)!==void 0).map(({id:l})=>l),r=l=>o.every(d=>qe(ee(l)).includes(d));return[...new Set([...n.filter(l=>r(l)||i.includes(l)),...i])]}var An="/packaging",Fi={at:An,stays:!0},qb={material:"",each_piece:""},cA={studio:void 0,own:[qb],nothing:[]},pA=()=>g("run",An)===void 0?"studio":k(Fi).length?"own":"nothing";function $p(){let e=pA();return D({name:"packaging",pointers:[An],summary:`Packaging${mA(e)}`,body:()=>s`${T({question:"What goes round each piece",at:An,is_told_elsewhere:e==="own",chosen:e,answers:[["studio","As the studio packs"],["own","Of this run's own"],["nothing","Nothing"]],puts:t=>cA[t],then:t=>t==="own"?`${An}/0/material`:An})}
      ${e==="own"?fA():u}`})}function mA(e){if(e==="studio")return"";if(e==="nothing")return": none";let t=X("run",An).map(({material:n})=>ee(String(n??""))).filter(Boolean);return t.length?`: ${t.join(", ")}`:""}var fA=()=>s`<p class="hint">In place of all that the studio packs with. Its price is that of its pack.</p>
    ${k(Fi).map((e,t)=>{let n=String(e.material||`packaging ${t+1}`);return s`<div class="row" id=${C(Fi,t)}>
        ${f({label:`Material ${t+1}`,at:`${An}/${t}/material`,hint:"As its pack or price calls it."})}
        ${f({label:`Of it, each piece ${t+1}`,at:`${An}/${t}/each_piece`,unit:"pieces",short:!0,hint:"How many, or a mass such as 3 g"})}
        ${U(Fi,t,n)}
      </div>`})}
    ${G(Fi,"Another material",()=>N(Fi,qb,"A material"))}`;function Ub(){let e="/lye_pot",t=g("run",e)!==void 0;return!t&&!ut()?u:s`<div class="labelled">
      ${vd(e,"Make one pot of lye solution for both",t,{})}${kn("lye_solution")}
    </div>
    ${Lt("lye_solution")}
    ${t?f({label:"The empty pot weighs",at:`${e}/pot_tare`,unit:"g",optional:!0,hint:"If you know it, you are told what the full pot is to weigh."}):u}`}function zb(e){let t={at:"/bottles"},n=k(t);return D({name:"bottles",pointers:[t.at],summary:"Bottles of fragrance to use up",is_needed:n.length>0,body:()=>s` <p class="hint">
          A whole bottle is divided so that every batter gets the same percentage, not half
          each.${e&&_e(e)?` Weights are of ${_e(e)}.`:""}
        </p>
        ${n.map((o,i)=>{let r=`${t.at}/${i}`,l=String(o.name)||`bottle ${i+1}`;return s`<div class="part" id=${C(t,i)} role="group" aria-label=${l}>
            <div class="part-head">
              <p class="part-title">${l}</p>
              ${U(t,i,l)}
            </div>
            ${I("run",r)}
            <div class="row">
              ${f({label:"Fragrance, as in the formulas",at:`${r}/name`})}
              ${f({label:"The bottle holds",at:`${r}/holds`,unit:"g",short:!0})}
            </div>
            ${e?hA(e,i,l):u}
          </div>`})}
        ${G(t,"Use up a bottle",()=>N(t,{name:"",holds:""},"bottle"))}`})}function hA(e,t,n){let o=e.bottles?.[t];return o?.name!==n?u:o.parts.map((i,r)=>F({key:`bottle.${t}.${r}`,label:`Into the ${i.part.toLowerCase()}`,note:`${R(i.percent_of_batter,2)} % of the batter`,shown:te(a.units,he(i,"")),size:"weigh",of:`${e.place}.bottles.${t}.parts.${r}.g`}))}var ns="/label",wp=()=>g("run",ns)!==void 0;function Jb(){let t=g("studio",Ci.studio)!==void 0?{weight_spread:""}:{market:""};le("set-up label"),E("run","Label added",ns,t,L("lane-label"))}function Kb(){return s`${I("run",ns)} ${gA()}
    <button type="button" @click=${()=>E("run","Label removed",ns,void 0)}>Remove the label</button>`}var Ci={run:"/label/market",studio:"/label/market"};function yp(){let{of:e,at:t}=Tr(Ci);return s`${T({of:e,question:"Where it is sold",at:e==="run"?ns:t,asked_at:t,chosen:g(e,t)||void 0,answers:[["EU","In the EU"],["US","In the US"]],puts:n=>e==="run"?_A(n):n})}
  ${eo("Where it is sold",[Ci])}`}function gA(){let e=g("run","/label/weighed_pieces")===void 0?"said":"weighed";return s`${yp()}
  ${T({question:"How much pieces differ",at:"/label",is_told_elsewhere:!0,chosen:e,answers:[["weighed","I have weighed finished pieces"],["said","I say how much they differ"]],puts:$A})}
  ${e==="weighed"?bA():s`<div class="row">
          ${f({label:"Heavier or lighter by",at:"/label/weight_spread",optional:!0,short:!0,hint:"Such as 2 g or 3 %."})}
          ${f({label:"Pour line higher or lower by",at:"/label/pour_line_off_by",unit:"mm",optional:!0,short:!0})}
        </div>`}
  ${f({label:"Your labels already say",at:"/label/printed_weight",unit:"g",optional:!0,hint:"It is checked against your pieces."})}
  ${on(Ci)==="EU"||g("run",bp)!==void 0?vd(bp,"With the e mark",g("run",bp)===!0,!0):u}`}var bp="/label/e_mark";function _A(e){return{...fe("run","/label",e==="EU"?[]:["e_mark"]),market:e}}function $A(e){let t=fe("run","/label",["weighed_pieces","weight_spread","pour_line_off_by"]);return e==="weighed"?{...t,weighed_pieces:["","",""]}:t}function bA(){let e={at:"/label/weighed_pieces",least:3};return s`<div class="trials">
      ${k(e).map((t,n)=>s`<div class="row" id=${C(e,n)}>
            ${f({label:`Piece ${n+1}`,at:`${e.at}/${n}`,unit:"g",short:!0})}
            ${U(e,n,`piece ${n+1}`)}
          </div>`)}
    </div>
    ${G(e,"One more piece",()=>N(e,"","piece"))}`}function Vb(e){let{batches:t,fillings:n,cavities:o,to_stock:i}=e.pieces,r=e.batches.map(c=>`${Fd(e)?`${c.count} of `:""}${Nt(e,c)}`),l=`Made in ${t} batches${Fd(e)?": ":" of "}${jt(r)}; ${Sa(n,o)}.`,d=e.batch_limits.filter(c=>c.sets);return s`<div class="batches-told of-plan">
    ${Ne(e)?s`<p><b>${l}</b></p>`:u}
    ${i>0?s`<p>
            ${V(i,e.cut?"bar":"piece")} beyond those to sell ${i===1?"goes":"go"} to
            stock.
          </p>`:u}
    ${d.length?s`<p><span class="called">What sets a batch:</span> ${d.map(c=>c.text).join(" ")}</p>`:u}
    ${e.around.length?s`<p><span class="called">One fewer, one more:</span> ${e.around.map(c=>c.text).join(" ")}</p>`:u}
  </div>`}var Qb=e=>e.map(t=>`M${t.map(([n,o])=>`${n.toFixed(2)} ${(-o).toFixed(2)}`).join("L")}Z`).join("");function Gb(e,t){let n=t.brim-t.floor,o=e.pour.poured_to_mm??e.pour.depth_mm,i=e.decorations?.find(c=>!c.buried&&c.cavity_fills>0),r=i?ew(i):0,l=i?i.on_top?.stands_proud_mm??1.9*r:0,d=e.pipe?wA(e,t,n,l):0;return{brim:n,line:o,topping:d,ball:r,proud:l,top:Math.max(n,(e.pipe?n:o)+d+l)}}function wA(e,t,n,o){let i=Ct($(a.run.now,"/pipe/envelope/height"));if(i!==void 0)return i;let r=(e.piece.size?.height_mm??0)-n-o;if(r>1)return r;let[l,d]=qu(t,t.brim-.01),c=Math.PI/4*(d-l)**2;return 1500*e.pipe.visible_each_ml/c}function vp(e,t){let[n,o]=qu(e,e.brim-.01),i=(n+o)/2,r=3,l=m=>(o-n)/2*Math.sqrt(1-(m/(r+.3))**2),d=m=>-(t.brim+t.topping*m/r),c=(m,_,b)=>{let w=i+b*(Math.max(l(m),l(_))+(o-n)*.035);return`C${w} ${d(m)} ${w} ${d(_)} ${i+b*l(_)*(_?.94:1)} ${d(_)}`},p=`M${n} ${d(0)}`;for(let m=0;m<r;++m)p+=c(m,m+1,-1);p+=`L${i+l(r)*.94} ${d(r)}`;for(let m=r;m>0;--m)p+=c(m,m-1,1);return`${p}Z`}var os=(e,t)=>e===t?`shaded ${t}`:"plain";function lo(e,t,n=u){return s`${Yb(e,t,n)}
  ${e==="decorate"&&kp(t)?s`<p class="hint">${kp(t)}</p>`:u}`}var uo=(e,t)=>s`<div class="small-view">${Yb(e,t,u)}</div>`;function Yb(e,t,n){let o=a.measured?.outline;if(!o)return s`<p class="drawing hint">${a.measuring_failed??"Reading the mould ..."}</p>`;let i=Gb(t,o),r=o.right-o.left,l=Math.max(6,r*.1),d={x:o.left-l,y:-i.top-l,w:r+2*l,h:i.top+2*l};return s`<div class="drawing">
    <svg viewBox="${d.x} ${d.y} ${d.w} ${d.h}" role="img" aria-label=${PA(e,t)}>
      ${yA(e)} ${vA(e,t,o,i)} ${xA(e,t,o,i)} ${TA()}
      ${RA(e,t,o,i)} ${DA(e,t,o,i)}
      ${S`<line class="pour-line" x1=${d.x+1} x2=${d.x+d.w-1} y1=${-i.line} y2=${-i.line} />
        <line class="brim" x1=${d.x+1} x2=${o.left-1} y1=${-i.brim} y2=${-i.brim} />
        <line class="brim" x1=${o.right+1} x2=${d.x+d.w-1} y1=${-i.brim} y2=${-i.brim} />`}
    </svg>
    ${n}
  </div>`}function Zb(e,t){let n=a.measured.outline,o=Gb(e,n),i=n.right-n.left,r=Math.max(6,i*.1),l=o.top+2*r;return{share:(o.top+r-t)/l,per_mm:1/l,w:i+2*r,h:l}}function yA(e){return S`<defs>
    <pattern id="hatch-${e}" width="2.4" height="2.4" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <line class="hatch" x1="0" y1="0" x2="0" y2="2.4" /></pattern>
    <pattern id="dots-${e}" width="2" height="2" patternUnits="userSpaceOnUse"><circle class="dot" cx="1" cy="1" r="0.35" /></pattern>
    <clipPath id="cavity-${e}"><path clip-rule="evenodd" d=${Qb(Xb())} /></clipPath>
  </defs>`}function Xb(){let e=a.measured.outline;return e.loops.map(t=>t.map(([n,o])=>[n,o-e.floor]))}function vA(e,t,n,o){let i=e==="cut"?"pour":e,r=t.pour.layers??[],l=(r.length?r.map(d=>kA(d,n)):[[o.line,o.line]]).map(([d,c])=>`M${n.left} 0V${-d}L${n.right} ${-c}V0Z`);return S`<g clip-path="url(#cavity-${e})">${l.map((d,c)=>S`<path class="whole" d=${d} /><path class="${os(i,"pour")} band${c%3}" d=${d} />${i==="pour"&&c%2===0?S`<path fill="url(#hatch-${e})" d=${d} />`:u}`).reverse()}</g>`}function kA(e,t){let{surface:n,to_mm:o}=e;if(!n)return[o,o];let i=r=>n.over_origin_mm+n.rise_x*r+n.rise_y*t.cut_y;return[i(t.left),i(t.right)]}function xA(e,t,n,o){if(!t.pipe||o.line>=o.brim)return u;let i=Math.min(1,(parseFloat(String($(a.run.now,"/pipe/fills_headspace")).replace(",","."))||0)/100),r=(n.right-n.left)*i,l=(n.left+n.right)/2;return S`<g clip-path="url(#cavity-${e})"><rect class=${os(e,"pipe")} x=${l-r/2} width=${r}
    y=${-o.brim} height=${o.brim-o.line} /></g>`}function TA(){return S`<path class="wall" fill-rule="evenodd" d=${Qb(Xb())} />`}function RA(e,t,n,o){let i=(n.left+n.right)/2,r=t.pipe?o.brim:o.line,l=t.decorations?.flatMap((d,c)=>(d.buried?.embeds??[]).map(p=>({embed:p,one:d,i:c})))??[];return S`
    ${t.pipe?S`<path class=${os(e,"pipe")} d=${vp(n,o)} />${e==="pipe"?S`<path fill="url(#dots-pipe)" d=${vp(n,o)} />`:u}`:u}
    ${e==="dust"?SA(t,n,o):u}
    ${o.ball?S`<circle class=${os(e,"decorate")} cx=${i} cy=${-(r+o.topping+o.proud-o.ball)} r=${o.ball} />`:u}
    ${l.map(({embed:d,one:c,i:p})=>AA(os(e,"decorate"),i,d,c,p))}`}function SA(e,t,n){let o=`M${t.left} ${-n.line}H${t.right}`;return S`<path class="powder" d=${e.pipe?vp(t,n):o} />`}function AA(e,t,n,o,i){let[r,l]=[t+n.middle_mm[0],n.middle_mm[2]],d=Ct($(a.run.now,`/decorations/${i}/rod/diameter`)),c=Ct($(a.run.now,`/decorations/${i}/rod/length`));if(!d||!c)return S`<circle class=${e} cx=${r} cy=${-l} r=${ew(o)} />`;let[p,m]=[n.turn[0][0],n.turn[2][0]],_=Math.min(1,Math.hypot(p,m)),b=d/2*Math.sqrt(1-_*_),w=c*_+2*b,x=-180/Math.PI*Math.atan2(m,p);return S`<rect class=${e} x=${-w/2} y=${-d/2} width=${w} height=${d} rx=${b} ry=${b?d/2:0}
    transform="translate(${r} ${-l}) rotate(${x})" />`}var ew=e=>Math.cbrt(3e3*e.volume_each_ml/(4*Math.PI));function kp(e){let t=(e.decorations??[]).filter((n,o)=>$(a.run.now,`/decorations/${o}/rod`)===void 0&&(n.buried||n.cavity_fills>0)).map(n=>n.name);return t.length?`Drawn as a ball of its volume, whatever its shape: ${t.join(", ")}.`:""}function DA(e,t,n,o){if(e!=="cut"||!t.cut)return u;let i=Math.max(t.cut.rows,t.cut.columns);return S`${Array.from({length:i-1},(r,l)=>{let d=n.left+(n.right-n.left)*(l+1)/i;return S`<line class="knife" x1=${d} x2=${d} y1=${-o.line} y2="0" />`})}`}function PA(e,t){let n=O(Se(a.units,t.pour.below_brim_mm));return`The piece from the side, to scale; ${{pour:"the pour",pipe:"the topping",decorate:"the decoration",dust:"what powder may fall on",cut:"the loaf with its cuts"}[e]} is shaded. Pour line ${n} below the brim. ${kp(t)}`.trim()}var OA=e=>`set-up ${e}`;function tt({name:e,title:t,drawing:n,result:o,about:i,form:r}){let l=OA(e),d=()=>wt({part:t,fold:l},r);if(xn())return s`${d()}`;i.some(([m,_])=>We(m,_))&&le(l);let c=a.open.has(l),p=_i().filter(({folds:m})=>m.includes(l)).length;return s`<section class="lane ${e} ${c?"is-open":""}" aria-labelledby="lane-${e}">
    <div class="part-line">
      ${c||!n?u:n()}
      <div class="part-told">
        <h2 id="lane-${e}" tabindex="-1">${t}</h2>
        ${o} ${p?s`<p class="lacks">${p} still needed</p>`:u}
      </div>
      <button
        type="button"
        aria-expanded=${c?"true":"false"}
        aria-label="${c?"Close":"Change"} ${t}"
        @click=${()=>He("open",l)}
      >
        ${c?"Close":"Change"}
      </button>
    </div>
    ${c?s`<div class="lane-body">${d()}</div>`:u}
  </section>`}var be=e=>s`<p class="order ${a.is_old&&a.plan?"old":""}">${e}</p>`;var tw=()=>k(Ae).length>0,nw=()=>k(Tt).length>0;function ow(e,t,n,o){return e?.length===t.length?e[o]:e?.find(i=>i.name===n)}function iw(e){let t=e?k(Ae).flatMap((n,o)=>aw(e,o)??[]):[];return tt({name:"decorate",title:"Decorate",drawing:e&&(()=>uo("decorate",e)),result:t.length?t.map(n=>FA(e,n)):be(rw(Ae,ao)),about:[["run",Ae.at]],form:()=>s`${e?s`<div class="side">${lo("decorate",e)}</div>`:u}
        <div class="weights">${e?k(Ae).map((n,o)=>MA(e,o)):u}</div>
        ${lw(Ae,ao,Hb)}`})}var rw=(e,t)=>`${k(e).map((n,o)=>t(o)).join(", ")}, not yet with figures.`;function MA(e,t){let n=aw(e,t);return n?CA(e,n,t):u}function sw(e){let t=e?.dust?.length?k(Tt).map((n,o)=>IA(e,o)):void 0;return tt({name:"dust",title:"Dust",drawing:e&&(()=>uo("dust",e)),result:t??be(rw(Tt,Ml)),about:[["run",Tt.at]],form:()=>s`<div class="side">${e?lo("dust",e):u}</div>
        <div class="weights">${e?k(Tt).map((n,o)=>WA(e,o)):u}</div>
        ${lw(Tt,Ml,Fb)}`})}var aw=(e,t)=>ow(e.decorations,k(Ae),A("run",`/decorations/${t}/name`),t);function lw(e,t,n){return s`<div class="all-questions">
    ${k(e).map((o,i)=>s`<section class="questions" id=${C(e,i)} aria-labelledby="${C(e,i)}-title">
          <div class="part-head">
            <h3 id="${C(e,i)}-title">${t(i)}</h3>
            ${U(e,i,t(i))}
          </div>
          ${wt({part:t(i)},()=>n(i))}
        </section>`)}
  </div>`}function BA(e,t){return s`<h3>${e.name}</h3>
    ${F({key:`decorations.${t}.count`,label:"Bought, spares included",shown:[String(e.casts),""],of:`decorations.${t}.casts`})}`}function FA(e,t){if(t.bought)return be(s`<b>${t.casts}</b> × ${t.name}, bought.`);let n=t.tray_fills>0?`, in ${t.tray_fills} tray ${t.tray_fills===1?"fill":"fills"}`:"",o=O(te(a.units,he(t,"make_")));return be(s`Cast <b>${t.casts}</b> of ${t.name} ahead${n}, from <b>${o}</b> of
      ${t.material}${Ne(e.whole)?", for the whole run":""}.`)}function CA(e,t,n){return t.bought?BA(t,n):s`<h3>${t.name} ${Ne(e.whole)?s`<small>for the whole run</small>`:u}</h3>
    ${F({key:`set-up.decorations.${n}.make`,label:`Melt of ${t.material}`,shown:te(a.units,he(t,"make_")),of:`decorations.${n}.make_g`})}
    ${F({key:`decorations.${n}.each`,label:"Each weighs",note:`${R(t.volume_each_ml,2)} ml`,shown:j(a.units,t.mass_each_g??0,2),of:`decorations.${n}.mass_each_g`})}
    ${t.casting_s?s`<p>${Zn(t.casting_s)} of casting.</p>`:u} ${LA(t,n)}`}function LA(e,t){let{on_top:n,buried:o}=e;if(!n&&!o)return u;let i=l=>l===null?"not known":O(Se(a.units,l)),r=l=>{let d=(o?.embeds??[]).map(l).filter(c=>c!==null);return d.length?O(Se(a.units,Math.min(...d))):"nothing near"};return s`<h4>Fit of ${e.name}</h4>
    <dl class="facts">
      ${n?s`<div>
                <dt>Contact circle</dt>
                <dd>${i(n.contact_mm)}</dd>
              </div>
              <div>
                <dt>Flat of the peak</dt>
                <dd>${i(n.peak_flat_mm)}</dd>
              </div>
              <div>
                <dt>Sticks out by</dt>
                <dd>${i(n.stands_proud_mm)}</dd>
              </div>`:u}
      ${o?s`<div>
                <dt>In each</dt>
                <dd>${o.embeds.length}</dd>
              </div>
              <div>
                <dt>Least cover to the floor</dt>
                <dd>${r(l=>l.floor_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the wall</dt>
                <dd>${r(l=>l.wall_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the pour line</dt>
                <dd>${r(l=>l.pour_line_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the next one</dt>
                <dd>${r(l=>l.apart_mm)}</dd>
              </div>
              <div>
                <dt>Batter pushed aside</dt>
                <dd>${R(o.displaced_ml,1)} ml</dd>
              </div>`:u}
    </dl>
    ${Oo(`decorations.${t}.fit`,"How the fit is measured",`decorations.${t}.${n?"on_top":"buried"}`)}`}function IA(e,t){let n=uw(e,t);if(!n)return u;let o=_e(e);return be(s`<b>${O(te(a.units,he(n,"")))}</b> of ${n.name}${o?` for ${o}`:""}.`)}var uw=(e,t)=>ow(e.dust,k(Tt),A("run",`/dust/${t}/name`),t);function WA(e,t){let n=uw(e,t);if(!n)return u;let o=g("run",`/dust/${t}/per_piece`)!==void 0,i=n.exposed_cm2===0&&!o,r=F({key:`set-up.dust.${t}`,label:n.name,note:_e(e),shown:te(a.units,he(n,"")),of:`${e.place}.dust.${t}.g`});return s`${r}${i?s`<p class="alarm">
          No topping or decoration is exposed, so the amount is zero: give the weight for one piece instead.
        </p>`:u}`}function dw(e){let t=e?.cut;return tt({name:"cut",title:"Cut",drawing:e&&(()=>uo("cut",e)),result:t?EA(e,t):be("Cut into bars, not yet with figures."),about:[["run","/cut"],["studio","/kerf"]],form:()=>s`${t?NA(e,t):u}
        <div class="all-questions">${O_()}</div>`})}var EA=(e,t)=>be(s`Cut <b>${t.bars_each} bars</b> from each, ${t.columns} by ${t.rows}; a bar is
      ${O(j(a.units,e.piece.fresh_g))} on average, fresh.`);function NA(e,t){return s`<div class="side">${lo("cut",e)}</div>
    <div class="weights">
      ${F({key:"cut.bar",label:"A bar on average, fresh",note:jA(t),shown:j(a.units,e.piece.fresh_g),of:"cut.bars_each"})}
      ${F({key:"cut.offcuts",label:"Offcuts",shown:j(a.units,t.offcuts_g),of:"cut.offcuts_g"})}
      ${HA(t)}
    </div>`}function jA(e){let t=e.bars.map(i=>i.fresh_g),n=Math.floor(Math.min(...t)*10)/10,o=Math.ceil(Math.max(...t)*10)/10;return`${R(n,1)} to ${R(o,1)} g`}function HA(e){return e.one_more?.length?s`<ul class="limits">
    ${e.one_more.map(t=>s`<li>Cut to ${t.size_text} along ${t.direction}: ${t.bars} bars from each.</li>`)}
  </ul>`:u}function cw(e){return tt({name:"label",title:"Label",drawing:UA,result:be(qA(e)),about:[["run","/label"]],form:()=>s`<div class="more">${Kb()} ${e?tp(e):u}</div>`})}function qA(e){let t=e?.piece.label_g;return!e?.label||t===null||t===void 0?"A draft of the label, not yet with figures.":s`Net weight for the label <b>${O(j(a.units,t,0))}</b>, sold in the ${e.label.market}.`}var UA=()=>s`<div class="small-view">
    <svg class="jug-sign" viewBox="0 0 60 50" aria-hidden="true">
      ${S`<path class="plain" d="M8 12H40L54 26L40 40H8Z" /><path class="wall" d="M8 12H40L54 26L40 40H8ZM16 21H36M16 27H32M16 33H36" />`}
    </svg>
  </div>`;var Dn=e=>f({...e,of:"studio"});function pw(){let e=(t,n,o)=>D({of:"studio",name:`ready ${t}`,pointers:[t],summary:s`<span>${n}<small>${pe("studio",t).join(", ")}</small></span>`,body:o});return s`<section class="questions of-studio" aria-label="Standing ready">
    <h3>Standing ready</h3>
    <div class="folds">
      ${e("/lye_solutions","Lye solutions",VA)} ${e("/blends","Melted blends of fats",YA)}
    </div>
  </section>`}var zA=["/prices","/packs","/have","/waste"],JA=e=>(t,n)=>zA.reduce((o,i)=>$(o,`${i}/${W(e)}`)===void 0?o:Ar(o,i,e,n),t);function KA(e,t){let n=i=>i===e?t:Array.isArray(i)?i.map(r=>r===e?t:r):i&&typeof i=="object"&&i.name===e?{...i,name:t}:i,o=["/pour/lye_from","/pipe/lye_from","/pour/blend","/pipe/blend"];return i=>o.reduce((r,l)=>{let d=$(r,l);return d===void 0?r:P(r,l,n(d))},i)}function mw({at:e,name:t,label:n,body:o}){let i=(l,d)=>Bt([["studio",l],["run",KA(t,d)]]),r=`${e}/${W(t)}`;return s`<div class="part" role="group" aria-label=${t}>
    <div class="part-head">
      <p class="part-title">${t}</p>
      ${Fo("studio",e,t)}
    </div>
    ${I("studio",r)}
    <div class="row">${Sr({of:"studio",at:e,name:t,label:n,also:JA(t),put:i})}</div>
    ${o}
    <div class="row">
      ${Dn({label:"Made on",at:`${r}/made_on`,date:!0,optional:!0,short:!0})}
      ${Dn({label:"Made by",at:`${r}/from`,optional:!0,short:!0})}
      ${Dn({label:"Note",at:`${r}/note`,optional:!0})}
    </div>
  </div>`}var Li="/lye_solutions",VA=()=>s`<p class="hint">
      Lye dissolved beforehand. A run weighs it in place of dry alkali and less water; choose it there, with the base or
      the topping.
    </p>
    ${pe("studio",Li).map(e=>mw({at:Li,name:e,label:"What you call it",body:QA(e)}))}
    ${wi({of:"studio",at:Li,label:"Another solution, such as Lye jug A",add:"Add the solution",blank:{strength:"",strength_range:["",""],kept_at:""},then:e=>ne("studio",`${Li}/${W(e)}/alkali`)})}`;function QA(e){let t=`${Li}/${W(e)}`,n=A("studio",`${t}/alkali`),o=n||"alkali",i=A("studio",`${t}/strength`);return s`${T({of:"studio",question:"Which alkali is dissolved in it?",at:`${t}/alkali`,chosen:n||void 0,answers:[["NaOH","NaOH, sodium hydroxide"],["KOH","KOH, potassium hydroxide"]],puts:r=>r,then:()=>`${t}/strength`})}
    <div class="row">
      ${Dn({label:`Strength: pure ${o} in 100 g of the solution`,at:`${t}/strength`,unit:"%"})}
      ${Dn({label:"Coldest it stands",at:`${t}/kept_at`,hint:"With its unit: 18 \xB0C, 64 \xB0F. Strong lye crystallises in the cold."})}
    </div>
    <p role="status">${GA(i,o)}</p>
    <p class="question">By now it may be</p>
    <div class="row">
      ${Dn({label:"as weak as",at:`${t}/strength_range/0`,unit:"%",short:!0})}
      ${Dn({label:"or as strong as",at:`${t}/strength_range/1`,unit:"%",short:!0})}
    </div>
    ${I("studio",`${t}/strength_range`)}
    <p class="hint">An open jug grows stronger as water leaves it, and weaker as it takes up carbon dioxide.</p>
    ${Je({of:"studio",at:`${t}/made_from`,name:`what ${e} is dissolved of`,title:"Dissolved by yourself",add:"I dissolve it myself",blank:{purity:""},body:()=>s`<div class="row">
            ${Dn({label:`Purity of the dry ${o}`,at:`${t}/made_from/purity`,unit:"%",short:!0})}
          </div>
          <p class="hint">It then costs what its alkali and water cost, unless it has a price of its own.</p>`})}`}function GA(e,t){let n=/^\s*(\d+(?:[.,]\d+)?)\s*%\s*$/.exec(e)?.[1],o=Number(n?.replace(",","."));if(!n||o>=100)return`As much ${t} as water is 50 %.`;let i=r=>String(Math.round(r*100)/100);return`So ${i(o)} g of pure ${t} and ${i(100-o)} g of water in 100 g.`}var is="/blends",YA=()=>s`<p class="hint">
      Fats melted together beforehand. A run weighs the blend in place of what it holds of the formula's fats; choose it
      there, with the base or the topping.
    </p>
    ${pe("studio",is).map(e=>mw({at:is,name:e,label:"What you call it",body:ZA(e)}))}
    ${wi({of:"studio",at:is,label:"Another blend, such as Hard fats",add:"Add the blend",blank:{fats:[]},then:e=>L(`find-blend ${e}`)})}`;function ZA(e){let t={of:"studio",at:`${is}/${W(e)}/fats`,stays:!0},n=k(t),o=i=>n.some(r=>r.fat===i);return s`${I("studio",t.at)}
  ${n.map((i,r)=>s`<div class="row" id=${C(t,r)}>
        ${Dn({label:ee(String(i.fat)),at:`${t.at}/${r}/share`,unit:"%",short:!0})}
        ${U(t,r,ee(String(i.fat)))} ${I("studio",`${t.at}/${r}/fat`)}
      </div>`)}
  ${n.length?s`<p class="total" role="status">
          ${ki("Its fats",n.map(i=>i.share))}
        </p>`:u}
  ${Ho({key:`blend ${e}`,label:n.length?"Another fat of it":"Which fats are in it?",offers:XA(),among:"fats",taken:o,take:i=>N(t,{fat:i,share:""},ee(i))})}`}var XA=()=>[...new Set(["pour","pipe"].flatMap(e=>{let t=a.formulas[e]?.now.fats;return Array.isArray(t)?t.map(n=>String($(n,"/fat")??"")).filter(Boolean):[]}))],fw=e=>k({of:"studio",at:`${is}/${W(e)}/fats`}).map(({fat:t})=>String(t)),Ii=e=>{let t=g("studio",`${Li}/${W(e)}`)??{},[n,o]=[t.alkali,t.strength].map(i=>String(i??""));return{alkali:n,words:[e,[n,o].filter(Boolean).join(" ")].filter(Boolean).join(": ")}};var rs=e=>`/${e}/lye_from`,ss=e=>`/${e}/blend`;function as(e){let t=pe("studio","/lye_solutions").length>0||g("run",rs(e))!==void 0,n=pe("studio","/blends").length>0||g("run",ss(e))!==void 0;if(!t&&!n)return u;let o=[...hw(e),gw(e)].filter(Boolean).join(", ");return D({name:`/${e} ready`,pointers:[rs(e),ss(e)],summary:`From what stands ready${o&&`: ${o}`}`,body:()=>s`${t?tD(e):u} ${n?oD(e):u}`})}function hw(e){let t=g("run",rs(e));return typeof t=="string"?[t]:X("run",rs(e)).map(String)}var eD=e=>X(e,"/alkali").map(t=>String($(t,"/alkali")));function tD(e){let t=rs(e),n=J("run",t),o=hw(e),i=eD(e),r=[...new Set([...pe("studio","/lye_solutions"),...o])],l=r.filter(m=>o.includes(m)||i.includes(Ii(m).alkali)),d=r.filter(m=>!l.includes(m)),c=ve("run",t),p=m=>{let{alkali:_}=Ii(m),b=o.includes(m),w=o.filter(Oe=>Oe!==m&&(b||Ii(Oe).alkali!==_)),x=b?w:[...w,m],K=x.length>1?x:x[0];E("run",`${m}: ${b?"no":"yes"}`,t,K)};return s`<div class="field asked ${c?"wants":""}">
    <p class="question" id="${n}-label">
      Lye solution that is weighed in place of dry ${i.length?jt(i):"alkali"}
    </p>
    <div class="choice" role="group" id=${n} tabindex="-1" aria-labelledby="${n}-label">
      ${l.map(m=>s`<button type="button" aria-pressed=${o.includes(m)?"true":"false"} @click=${()=>p(m)}>
            ${Ii(m).words}
          </button>`)}
    </div>
    ${ge(n,c,o.length?void 0:"None chosen: the alkali is weighed dry.")}
    ${d.length?s`<p class="hint">Of another alkali than this formula's: ${d.map(m=>Ii(m).words).join(", ")}.</p>`:u}
  </div>`}var gw=e=>{let t=g("run",ss(e));return typeof t=="string"?t:A("run",`${ss(e)}/name`)};function nD(e,t){let n=X(e,"/fats").map(({fat:r})=>String(r)),o=new Set(n.flatMap(r=>{let l=a.fats.find(({id:d})=>d===r);return l?[l.id,l.name,l.inci,...l.also_called]:[r]})),i=new Set([...o].map(r=>r.toLowerCase()));return fw(t).every(r=>i.has(r.toLowerCase()))}var xp="\0singly";function oD(e){let t=ss(e),n=gw(e),o=[...new Set([...pe("studio","/blends"),...n?[n]:[]])],i=o.filter(d=>d===n||nD(e,d)),r=o.filter(d=>!i.includes(d)),l=g("run",`${t}/share`)!==void 0;return s`${T({question:"Blend of fats that is weighed",at:t,chosen:n||xp,answers:[[xp,"None: each fat by itself"],...i.map(d=>[d,d])],puts:d=>d===xp?void 0:d,hint:r.length?`With fats that this formula has not: ${r.join(", ")}.`:void 0})}
  ${n?l?s`<div class="row">
            ${f({label:`${n}: share of all fats of the formula`,at:`${t}/share`,unit:"%",optional:!0,short:!0})}
          </div>`:s`<p class="hint">As much of it is taken as the shares of its fats have room for.</p>
            <button
              type="button"
              @click=${()=>E("run","Its share",t,{name:n,share:""},ne("run",`${t}/share`))}
            >
              Take a share of my own
            </button>`:u}`}var po="/pour/layers",co={at:po,in_order:!0},Tp=[["parts","Parts"],["depth","Thickness"],["mass","Weight in one"]],Fl=()=>k(co);function iD(){let e=t=>Fl().some(n=>t in n);return Tp.map(([t])=>t).find(e)??(e("rest")?"depth":"parts")}function $w(e){let t=Fl(),n=iD();return t.length?s`<h3>
      Layers, lowest first ${e&&_e(e)?s`<small>${_e(e)}</small>`:u}
    </h3>
    ${T({question:"All of them by",at:po,is_told_elsewhere:!0,chosen:n,answers:Tp,puts:o=>sD(o,e)})}
    <div class="items">${t.map((o,i)=>aD(o,i,n,e))}</div>
    ${G(co,"One more layer on top",()=>N(co,{name:rD(t),[n]:""},"layer"))}`:s`<p class="choice">
      ${G(co,"Pour it in layers",()=>N(co,{name:"Layer 1",parts:1},"layer"))}
    </p>`}function rD(e){for(let t=e.length+1;;++t)if(!e.some(n=>n.name===`Layer ${t}`))return`Layer ${t}`}function bw(e,t,n){let o=e?.pour.layers?.[n];return o?.name===t.name?o:void 0}function sD(e,t){let n=Fl(),o=a.is_old?void 0:t,i=(r,l)=>{let d=bw(o,r,l);return e==="parts"||!d||e==="depth"&&"tilted"in r?"":e==="depth"?`${R(d.to_mm-d.from_mm,3)} mm`:`${R(d.mass_each_g,3)} g`};return n.map((r,l)=>{let d=Bl(l),c=e!=="parts"&&n.length>1&&l===n.length-1;return{...d,...c?{rest:!0}:{[e]:i(r,l)}}})}var Bl=e=>fe("run",`${po}/${e}`,[...Tp.map(([t])=>t),"rest"]);function aD(e,t,n,o){let i=`${po}/${t}`,r=String(e.name)||`Layer ${t+1}`,l=bw(o,e,t);return s`<div class="part" id=${C(co,t)} role="group" aria-label="Layer ${r}">
    ${l&&o?lD(o,l,t):s`<p class="part-title">${r}</p>`} ${I("run",i)}
    ${dD(e,t,n,r)}
    ${o&&l?l.colours.map((d,c)=>uD(o,d,t,c)):u}
    ${D({name:i,pointers:["name","colours","tilted"].map(d=>`${i}/${d}`),summary:"Name, colours, tilt",body:()=>s` ${f({label:"Name of the layer",at:`${i}/name`})} ${fD(i,r)} ${hD(i,t)}
        ${U(co,t,r)}`})}
  </div>`}function lD(e,t,n){return F({key:`pour.layer.${n}`,label:t.name,note:`${hd(Se(a.units,t.to_mm-t.from_mm))} thick, ${hd(j(a.units,t.mass_each_g))} each`,shown:t.g_text===void 0?j(a.units,t.g):te(a.units,t),size:"weigh",of:`${e.place}.pour.layers.${n}.g`})}function uD(e,t,n,o){return F({key:`pour.layer.${n}.${o}`,label:t.name,note:t.teaspoons?`about ${R(t.teaspoons,1)} tsp`:"",shown:Io(a.units,t),size:"weigh",of:`${e.place}.pour.layers.${n}.colours.${o}.g`})}function dD(e,t,n,o){if(n==="parts")return cD(e,t,o);let i="rest"in e;return s`${i?u:f({label:`${o}, ${n}`,at:`${po}/${t}/${n}`,unit:n==="depth"?"mm":"g"})}
    <button
      type="button"
      aria-pressed=${i?"true":"false"}
      aria-label="${o} takes the rest"
      @click=${()=>i?mD(t,n):pD(t,n)}
    >
      Takes the rest
    </button>`}function cD(e,t,n){let o=`${po}/${t}/parts`,i=r=>()=>{h({typed:void 0}),Z("run",o,Math.max(1,(Number(e.parts)||0)+r))};return s`<div class="stepper parts-of">
    <button type="button" @click=${i(-1)} aria-label="One part less of ${n}">−</button>
    ${f({label:"Parts",at:o,number:!0})}
    <button type="button" @click=${i(1)} aria-label="One part more of ${n}">+</button>
  </div>`}function pD(e,t){let n=Fl().map((o,i)=>i===e?{...Bl(i),rest:!0}:o.rest?{...Bl(i),[t]:""}:o);E("run","takes the rest",po,n)}function mD(e,t){let n=`${po}/${e}`;E("run","amount of the layer",n,{...Bl(e),[t]:""},ne("run",`${n}/${t}`))}function fD(e,t){let n={at:`${e}/colours`,in_order:!0};return s`${k(n).map((o,i)=>{let r=`${n.at}/${i}`,l=String(o.name)||`colour ${i+1}`;return s`<div class="part" id=${C(n,i)} role="group" aria-label="${l} in ${t}">
      <div class="part-head">
        <p class="part-title">Colour: ${l}</p>
        ${U(n,i,l)}
      </div>
      ${I("run",r)}
      <div class="row">
        ${f({label:"Colour",at:`${r}/name`})}
        ${f({label:"Rate",at:`${r}/rate`,hint:"Such as 4 g/kg of batter, 1 tsp/lb of fats."})}
        ${f({label:"Bulk density (for spoons)",at:`${r}/bulk_density`,unit:"g/ml",optional:!0,short:!0,hint:"A level cup weighed, by the cup's volume."})}
      </div>
      ${to("run",r,l)}
    </div>`})}
  ${G(n,"Add a colour",()=>N(n,{name:"",rate:""},"colour"))}`}var _w=[["+x","+x, right in the drawing"],["-x","\u2212x, left in the drawing"],["+y","+y, back"],["-y","\u2212y, front"]];function hD(e,t){let n=`${e}/tilted`,o=g("run",`${n}/low_side`);return t===k(co).length-1&&g("run",n)===void 0?s`<p class="hint">The last layer is poured level.</p>`:Je({at:n,name:"the tilt",title:"The mould is tilted",add:"Tilt the mould for this layer",blank:{angle:"",low_side:""},body:()=>s`${f({label:"Tilt",at:`${n}/angle`,unit:"\xB0",short:!0})}
        ${T({question:"Low side",at:`${n}/low_side`,is_told_elsewhere:!0,chosen:o||void 0,answers:_w,puts:r=>r})}
        ${D({name:`${n} direction`,pointers:[],summary:"Another direction",is_needed:o!==""&&!_w.some(([r])=>r===o),body:()=>f({label:"Direction of the low side",at:`${n}/low_side`,unit:"\xB0",short:!0,hint:"In degrees from +x towards +y, seen from above."})})}
        <p class="hint">A thickness is then how far up the low wall the layer stands.</p>`})}var zt=()=>$(a.run.now,"/pour/line/depth")!==void 0?"depth":"below_brim";function Rp(e,t){let n=e.pour.depth_mm+e.pour.below_brim_mm,o=Math.min(Math.max(0,Math.round(t*2)/2),Math.floor(n*2)/2-.5),i=zt()==="depth"?n-o:o;h({typed:void 0}),Z("run",`/pour/line/${zt()}`,`${R(i,2)} mm`)}function ww(e){let t=e.pour.depth_mm+e.pour.below_brim_mm,n=Ct($(a.run.now,`/pour/line/${zt()}`));return n===void 0?e.pour.below_brim_mm:zt()==="depth"?t-n:n}function gD(e,t){let n=e.currentTarget,o=n.parentElement.querySelector("svg").getBoundingClientRect();n.setPointerCapture(e.pointerId);let i=l=>t((l.clientY-e.clientY)/o.height),r=()=>{n.removeEventListener("pointermove",i);for(let l of["pointerup","pointercancel"])n.removeEventListener(l,r)};n.addEventListener("pointermove",i);for(let l of["pointerup","pointercancel"])n.addEventListener(l,r)}function _D(e){if(!a.measured)return u;let t=e.pour.depth_mm+e.pour.below_brim_mm,n=ww(e),{share:o,h:i}=Zb(e,t-n),r=c=>gD(c,p=>Rp(e,n+p*i)),l=c=>{let p={ArrowUp:-1,ArrowDown:1,PageUp:-5,PageDown:5}[c.key];p!==void 0&&(c.preventDefault(),Rp(e,n+p))},d=c=>c&&(c.style.top=`${100*o}%`);return queueMicrotask(()=>d(document.querySelector(".line-handle")??void 0)),s`<div
    class="line-handle"
    role="slider"
    tabindex="0"
    aria-label="Pour line below the brim"
    aria-valuemin="0"
    aria-valuemax=${Math.floor(t)}
    aria-valuenow=${R(n,1)}
    aria-orientation="vertical"
    aria-valuetext="${O(Se(a.units,n))} below the brim"
    @pointerdown=${r}
    @keydown=${l}
  >
    <span aria-hidden="true">↕</span>
  </div>`}function $D(e){let{pour:t}=e,n=O(Se(a.units,t.below_brim_mm)),o=t.below_brim_mm<.05?"Pour to the brim":`Pour to ${n} below the brim`,i=e.cut?"the loaf":"each",r=_e(e);return be(s`${o}, <b>${O(j(a.units,t.mass_each_g))}</b> ${i}; make
      <b>${O(j(a.units,t.make_g))}</b>${r?` for ${r}`:""}.`)}var yw=()=>zt()==="depth"?"Depth":"Below brim";function vw(e){return tt({name:"pour",title:"Pour",drawing:e&&(()=>uo("pour",e)),result:e?$D(e):be(`${bD()}.`),about:[["run","/pour"]],form:()=>s`${e?wD(e):yD()}
        <div class="more">
          ${Cl("pour")} ${as("pour")} ${$w(e)} ${Na("pour")}
        </div>`})}function bD(){let e=A("run",`/pour/line/${zt()}`);return e?`${e} ${zt()==="depth"?"deep":"below the brim"}`:"No pour line yet"}function wD(e){let{pour:t}=e,n=`${e.place}.pour`,o=i=>()=>Rp(e,ww(e)+i);return s`<div class="side">
      ${lo("pour",e,_D(e))} ${kw(e)}
      <div class="stepper">
        <button type="button" @click=${o(-1)} aria-label="Pour line 1 mm higher">1 mm higher</button>
        ${f({label:yw(),at:`/pour/line/${zt()}`,unit:"mm"})}
        <button type="button" @click=${o(1)} aria-label="Pour line 1 mm lower">1 mm lower</button>
      </div>
    </div>
    <div class="weights">
      ${F({key:"pour.each",label:"Weigh into each",shown:j(a.units,t.mass_each_g),note:`${R(t.volume_each_ml,1)} ml`,of:`${n}.mass_each_g`})}
      ${F({key:"pour.mm",label:"1 mm more or less",shown:De(a.units,t.ml_per_mm,2),note:`${tn(t.ml_per_mm*t.density_g_per_ml,1)} g at the line`,of:`${n}.ml_per_mm`})}
      ${F({key:"set-up.pour.make",label:"Base to make",note:_e(e),shown:j(a.units,t.make_g),of:`${n}.make_g`})}
      ${F({key:"pour.density",label:"Density",shown:[`${t.density_g_per_ml} g/ml`,""],of:`${n}.density_g_per_ml`})}
    </div>`}var yD=()=>s`<div class="side">
    ${kw()} ${I("run","/pour/line")}
    ${f({label:yw(),at:`/pour/line/${zt()}`,unit:"mm"})}
  </div>`,Cl=e=>s`<button type="button" @click=${()=>Ye(e)}>
    Change the formula of the ${e==="pour"?"base":"topping"}
  </button>`;function kw(e){let t=n=>{if(n===zt())return;let o=e&&!a.is_old?e.pour[n==="depth"?"depth_mm":"below_brim_mm"]:void 0;E("run","pour line","/pour/line",{[n]:o===void 0?"":`${R(o,3)} mm`})};return ue("The pour line is measured",zt(),[["below_brim","From the brim"],["depth","From the floor"]],t)}var vD=[0,50,80,100];function xw(e){let t=e?.pipe;return tt({name:"pipe",title:"Pipe",drawing:t&&(()=>uo("pipe",e)),result:t?kD(e,t):be("A topping, not yet with figures."),about:[["run","/pipe"]],form:()=>t?xD(e,t):TD()})}function kD(e,t){let n=_e(e);return be(s`Pipe <b>${R(t.volume_each_ml,0)} ml</b> on each, ${O(j(a.units,t.mass_each_g))} at this
      whipped density; make <b>${O(j(a.units,t.make_g))}</b>${n?` for ${n}`:""}.`)}function xD(e,t){return s`<div class="side">
      ${lo("pipe",e)}
      ${F({key:"pipe.each",label:"Topping on each",shown:De(a.units,t.volume_each_ml),note:`${R(t.in_headspace_each_ml,1)} ml of it below the brim`,of:`${e.place}.pipe.volume_each_ml`})}
      ${F({key:"set-up.pipe.make",label:"Topping to make",note:_e(e),shown:j(a.units,t.make_g),of:`${e.place}.pipe.make_g`})}
      ${F({key:"pipe.density",label:"Whipped density",note:`overrun ${R(t.overrun_percent,0)} %`,shown:[`${t.density_g_per_ml} g/ml`,""],of:`${e.place}.pipe.density_g_per_ml`,term:"overrun"})}
      ${Cl("pipe")} ${as("pipe")}
    </div>
    <div class="weights">${oc(t)} ${Aw()} ${RD(e)} ${MD(e)}</div>
    <div class="more">${nc(t)} ${tc()}</div>`}var ls=e=>e===0?"pipe":`pipe.whipping${e}`,us=(e,t)=>`${e.place}.pipe.whippings.${t}`;function Tw(e,t){let n=Ra(e,t);return n?s`<h4 class="whipping">${n.replace(/^./,o=>o.toUpperCase())}</h4>`:u}function TD(){return s`<div class="more">${nc()}</div>
    <div class="side">${Aw()} ${g("run","/pipe/whip_now")===void 0?u:Sw()}</div>
    <div class="weights">${oc()} ${Cl("pipe")} ${as("pipe")}</div>
    <div class="more">${tc()}</div>`}var Rw=e=>_e(e)?s`<small>${_e(e)}</small>`:u;function RD(e){return s`<h3>Today's bowl ${Rw(e)}</h3>
    ${Sw()} ${e.whippings.map((t,n)=>SD(e,t,n))}`}function SD(e,t,n){let o=t.pieces_now,i=o==null?0:t.pieces-o,r=i>0?`Short by ${i} at this whipped density.`:`Enough for the ${t.pieces} to make.`;return s`${Tw(e,t)}
  ${o==null?u:F({key:`${ls(n)}.now`,label:"Enough for",note:r,shown:[V(o,"piece"),""],size:"weigh",of:`${us(e,n)}.pieces_now`})}
  ${DD(e,t,n)}`}function Sw(){let e=g("run","/pipe/whip/holds"),t=e===void 0?Fr():{holds:e,net:""};return Je({at:"/pipe/whip_now",name:"today's weigh-cup",title:"Today's weigh-cup",add:"Weigh a cup of today's whip",blank:t,body:AD})}function AD(){return s`<div class="row">
    ${f({label:"Weigh-cup today, net",at:"/pipe/whip_now/net",unit:"g"})} ${Cr("/pipe/whip_now")}
  </div>`}function DD(e,t,n){return t.readings?.length?D({name:`${ls(n)} readings`,pointers:[],summary:"Other readings of the weigh-cup",body:()=>PD(e,t,n)}):u}function PD(e,t,n){return s`<table class="readings">
      <caption>
        If the weigh-cup reads
      </caption>
      <thead>
        <tr>
          <th scope="col">net</th>
          <th scope="col">overrun</th>
          <th scope="col">pipes</th>
        </tr>
      </thead>
      <tbody>
        ${t.readings?.map(o=>s`<tr class=${o.planned?"planned":""}>
              <th scope="row">${R(o.net_g,1)} g${o.planned?" (planned)":""}</th>
              <td>${R(o.overrun_percent,0)} %</td>
              <td>${o.pieces}</td>
            </tr>`)}
      </tbody>
    </table>
    ${Oo(`${ls(n)}.readings`,"Show the calculation",`${us(e,n)}.readings`)}`}function Aw(){let e="/pipe/fills_headspace",t=Number(/^\s*(\d+(?:[.,]\d+)?)\s*%/.exec(A("run",e))?.[1]?.replace(",",".")),n=We("run",e);return s`<h3>
      <span id="recess">How much of the headspace below the brim does the topping fill?</span>
      ${Xn("headspace")}
    </h3>
    <div class="choice pictures" role="group" aria-labelledby="recess">
      ${vD.map(o=>s`<button
            type="button"
            aria-pressed=${o===t?"true":"false"}
            @click=${()=>Z("run",e,`${o} %`)}
          >
            ${OD(o)}<span
              >${{0:"Not at all, 0 %",50:"Half, 50 %",80:"Mostly, 80 %",100:"Level, 100 %"}[o]}</span
            >
          </button>`)}
    </div>
    ${f({label:"Headspace filled, as a share",at:e,unit:"%",hint:n?void 0:"Trials piped on flat paper do not include it."})}`}function OD(e){let t=52*(e/100);return s`<svg viewBox="0 0 72 46" aria-hidden="true">
    ${S`
    <path class="plain" d="M10 26H62L57 44H15Z" /><rect class="shaded pipe" x=${36-t/2} y="18" width=${t} height="8" />
    <path class="shaded pipe" d="M12 18C6 12 14 8 20 9C20 2 30 2 36 1C42 2 52 2 52 9C58 8 66 12 60 18Z" />
    <path class="wall" d="M8 18L15 44H57L64 18" />`}
  </svg>`}function MD(e){let t=e.whippings.map(i=>({one:i,words:BD(i)})).filter(({words:i})=>i),n=e.whippings[0],o=n?.limits??[];return!n||!o.length&&!t.length?u:s`<h3>Limits of whisk, bowl and time ${Rw(e)}</h3>
    ${t.map(({one:i,words:r})=>s`${Tw(e,i)}
          <p>${r}.</p>`)}
    <ul class="limits">
      ${o.map(i=>s`<li class=${i.sets?"binds":""}>
            ${i.sets?s`<strong>Sets the batch: </strong>`:u}${i.text}
          </li>`)}
    </ul>
    ${Oo("pipe.limits","How the limits come about",`${us(e,0)}.limits`)}`}function BD({piping_s:e,lye_spoonfuls:t}){return[e?`${Zn(e)} of piping`:"",t?`${t.count} spoonfuls of lye, ${Zn(t.altogether_s)}`:""].filter(Boolean).join("; ")}function Pw(e){return tt({name:"lye",title:"Lye",drawing:CD,result:e?Dw(e).map(FD):be("Not yet with figures."),about:[["run","/lye_pot"],["run","/bottles"]],form:()=>s`${e?s`<div class="more jugs">${Dw(e).map(LD)} ${WD(e)}</div>`:u}
        <div class="more">${Ub()} ${zb(e)}</div>`})}function Dw(e){let{pieces:t}=e.batch,n={slot:"pour",title:e.pipe?"Lye for the base":"Lye",batter:e.pour,place:`${e.place}.pour`,pieces:t,key:"pour"},o=e.whippings.map((i,r)=>{let l=Ra(e,i);return{slot:"pipe",title:`Lye for the topping${l&&`, ${l}`}`,batter:i,place:us(e,r),pieces:t,key:ls(r)}});return[n,...o]}function FD({title:e,batter:t,slot:n,pieces:o}){let i=Gn(n,o).length?" \u26A0":"";return be(s`${e}: ${R(t.lye_strength_percent,1)} % strong; superfat as weighed
      <b>${Ze(t.superfat_percent.effective)}${i}</b>.`)}var CD=()=>s`<div class="small-view">
    <svg class="jug-sign" viewBox="0 0 60 50" aria-hidden="true">
      ${S`<path class="plain" d="M15 22L19 44H41L45 22Z" /><path class="wall" d="M10 6L19 44H41L49 6M10 6H7M46 14C58 14 56 32 43 34" />`}
    </svg>
  </div>`;function LD({slot:e,title:t,batter:n,place:o,pieces:i,key:r}){let{effective:l}=n.superfat_percent,d=Gn(e,i).length>0,c=`danger-set-up-${r.replaceAll(".","-")}`,p=r===e;return s`<div class="jug">
    <h3>${t} <small>${n.formula}</small></h3>
    ${F({key:`set-up.${r}.strength`,label:"Lye strength",note:`water ${R(n.water_to_pure_alkali,2)} : 1 to alkali; water ${R(n.water_percent_of_fats,1)} % of the fats`,shown:[`${R(n.lye_strength_percent,1)} %`,""],of:`${o}.lye_strength_percent`})}
    ${F({key:`set-up.${r}.superfat`,label:"Superfat as weighed",shown:[`${Ze(l)}${d?" \u26A0":""}`,""],of:`${o}.superfat_percent.effective`,term:r==="pour"?"superfat_as_weighed":void 0})}
    ${yr(e,c,i)} ${Ow(n.superfat_percent)} ${ID(n,o,r)}
    ${!p||g(e,"/superfat")===void 0?u:f({label:"Planned superfat",of:e,at:"/superfat",unit:"%",described_by:d?c:void 0,hint:a.formulas[e]?.shipped?"Typing here makes a copy of the formula beside your run.":void 0})}
  </div>`}function Ow(e){let{low:t,high:n,likely_low:o,likely_high:i,uncertainties:r}=e,l=`It lies between ${Ze(t)} and ${Ze(n)}, as lots, purity and scales may fall`,d=o===void 0||i===void 0?".":`; nineteen batches in twenty between ${Ze(o)} and ${Ze(i)}.`,c=r[0],p=c?s` Most of the doubt is ${c.cause}: ${c.remedy}.`:u;return fd(t)?s`<p class="mind of-plan">
    <strong>Caution</strong> It may come out lye-heavy. ${l}${d}
    ${c?p:"Use a finer scale, a larger batch or a higher superfat."}
  </p>`:s`<p class="aside of-plan">${l}${d} Some fat is left over even at the lowest.${p}</p>`}function ID(e,t,n){return e.heat?s`${Mw(e.heat)} ${Oo(`${n}.heat`,"How the heat is worked out",`${t}.heat`)}`:u}function Mw(e){let t=i=>O(bg(a.units,i)),n=e.cooling.map(i=>`${i.shortest_min*60?Zn(i.shortest_min*60):"at once"} to ${Zn(i.longest_min*60)} in ${i.in}`),o=e.peak_c===null?"The KOH solution warms as it is diluted; how far is not known.":`Water at ${t(e.water_at_c)}: the lye may reach ${t(e.peak_c)}; it boils at ${t(e.boils_at_c)}.`;return s`<p class="aside of-plan">
    ${o}${n.length?` To cool: ${n.join("; ")}.`:""}${e.at_pour_c===null?"":` Lye and fats meet at about ${t(e.at_pour_c)}.`}
  </p>`}function WD(e){let t=e.lye_pot;if(!t)return u;let{units:n}=a,o=(i,r,l,d,c="")=>F({key:`pot.${i}`,label:r,note:c,shown:l,size:"weigh",of:`${e.place}.lye_pot.${d}`});return s`<div class="jug">
    <h3>
      One pot for both
      <small>strength ${R(t.strength_percent,1)} %${_e(e)&&`; ${_e(e)}`}</small>
    </h3>
    ${o("water","In the pot: water, distilled",te(n,he(t,"water_")),"water_g")}
    ${t.alkalis.map((i,r)=>o(`alkali.${r}`,`In the pot: ${i.name}`,te(n,he(i,""),"down"),`alkalis.${r}.g`))}
    ${o("lye","Lye solution in the pot",te(n,he(t,"lye_")),"lye_g",ED(t))}
    ${t.shares.map((i,r)=>s`${o(`share.${r}`,`Out of it for ${i.batter}`,te(n,he(i,"lye_"),"down"),`shares.${r}.lye_g`,`superfat then ${Ze(i.superfat_percent)}`)}
        ${i.top_up_g>0?o(`top_up.${r}`,`and plain water to ${i.batter}`,te(n,he(i,"top_up_")),`shares.${r}.top_up_g`):u}
        ${yr(r===0?"pour":"pipe","",e.batch.pieces)}
        ${i.superfat?Ow(i.superfat):u}`)}
    ${t.left_g?s`<p class="aside of-plan">
            ${O(te(a.units,{g:t.left_g,g_text:t.left_g_text,oz_text:t.left_oz_text}))} of lye
            is left in the pot, for the shares are rounded down.
          </p>`:u}
    ${t.heat?Mw(t.heat):u}
  </div>`}function ED(e){if(e.full_pot_g===null)return"";let{g_text:t,oz_text:n,...o}=he(e,"lye_"),i=te(a.units,{...o,g:e.full_pot_g,g_text:e.full_pot_g_text,oz_text:e.full_pot_oz_text});return`${O(i)} with the pot: make up with water to that after cooling`}var ds=new Map,ND=()=>ds.clear(),jD=e=>typeof e?.owned=="number"?e.owned:void 0;function Sp(e){let t=Ge(e,a.files?.moulds);return ds.has(t)||(ds.set(t,void 0),HD(t)),ds.get(t)}async function HD(e){try{ds.set(e,jD(we((await Me(e)).text))),Q()}catch(t){if(!(t instanceof y))throw t}}async function Bw(e,t){let n=Sp(e);n!==void 0&&(Z("studio",t,n),B(`${n} kept in the studio`),await qD(Ge(e,a.files?.moulds)),ce())}async function qD(e){let t=await Ce(Qe,e);t.shipped||t.theirs||(Re(t,P(t.now,"/owned",void 0)),await Gt(t),ND())}var Ll=["monday","tuesday","wednesday","thursday","friday","saturday","sunday"],Il=e=>e[0].toUpperCase()+e.slice(1),Wl=e=>f({...e,of:"studio"});function Fw(){return!xn()&&a.run.file&&a.open.has("folded studio days")&&al("run"),s`<section class="questions of-studio" aria-label="Making days">
    <h3>Making days</h3>
    ${D({of:"studio",name:"days",pointers:["/days",...qt()?[]:["/work"]],summary:s`<span>When you work${s`<small>${UD()}</small>`}</span>`,body:zD})}
  </section>`}function UD(){let e=g("studio","/days/making")??{};return Ll.filter(t=>e[t]).map(t=>`${Il(t)} ${String(e[t])}`).join(", ")}var zD=()=>s`<p class="hint">
      Hours on each day that you make, cast and pack; blank on days without. A run's days are planned into them.
    </p>
    <div class="row">
      ${Ll.map(e=>Wl({label:Il(e),at:`/days/making/${e}`,unit:"h",optional:!0,takes_part:!0,short:!0}))}
    </div>
    ${I("studio","/days")} ${I("studio","/days/making")} ${JD()} ${KD()} ${QD()}
    ${qt()?s`<p class="hint">How long a batch, a piece and packing take you stands under Work.</p>`:s`<p class="question">How long the work takes you</p>
            <div class="row">${ll(g("studio","/days")!==void 0)}</div>
            ${I("studio","/work")}`}`;function JD(){let e="/days/small_jobs",t=J("studio",e),n=X("studio",e),o=l=>{let d=Ll.filter(p=>p===l!==n.includes(p)),c=p=>Tn(P(p,e,d.length?[...d]:void 0),"/days");lt("studio",`${Il(l)}: ${n.includes(l)?"no":"yes"}`,c)},i=We("studio",e),r=Ll.filter(l=>n.includes(l)||!A("studio",`/days/making/${l}`));return s`<div class="field asked ${i?"wants":""}">
    <p class="question" id="${t}-label">Other days on which you are there to unmould, cut and set to chill</p>
    <div class="choice" role="group" id=${t} tabindex="-1" aria-labelledby="${t}-label">
      ${r.map(l=>s`<button type="button" aria-pressed=${n.includes(l)?"true":"false"} @click=${()=>o(l)}>
            ${Il(l)}
          </button>`)}
    </div>
    ${ge(t,i,"Without any, these wait for a making day.")}
  </div>`}var cs={of:"studio",at:"/days/off",and:e=>Tn(e,"/days")};function KD(){return s`<p class="question">Days off and holidays</p>
    ${k(cs).map((e,t)=>VD(String(e),t))}
    ${G(cs,"Add a day off",()=>N(cs,"","A day off"))}`}function VD(e,t){let n=`/days/off/${t}`,[o,i=""]=e.split("/"),r=J("studio",n),l=ve("studio",n),d=(m,_)=>Z("studio",n,_&&_!==m?`${m}/${_}`:m),c=(m,_,b,w)=>s`<div class="field short ${l?"wants":""}">
      <label for=${m}>${_}</label>
      <input
        id=${m}
        type="date"
        .value=${M(b)}
        @input=${x=>w(x.target.value)}
        @blur=${Bo}
        aria-invalid=${l?"true":"false"}
        aria-describedby=${l?`${r}-said`:u}
      />
      ${m===r?ge(r,l):u}
    </div>`,p=o?`off on ${oe(o)}`:`day off ${t+1}`;return s`<div class="row" id=${C(cs,t)} role="group" aria-label=${p}>
    ${c(r,"First day off",o,m=>d(m,i))}
    ${c(`${r}-last`,"Last, if there are several",i,m=>d(o,m))} ${U(cs,t,p)}
  </div>`}function QD(){let e=(t,n,o)=>Wl({label:n,at:`/days/${t}`,count:!0,optional:!0,short:!0,hint:o});return s`<p class="question">What limits the work of a day; left blank, it sets no limit</p>
    <div class="row">
      ${e("pots_owned","Pots for the base")} ${e("bowls_owned","Bowls for the topping")}
      ${e("used_a_day","Uses of each on a day","Once, if blank; washed up in between.")}
      ${e("rack_places","Pieces that can cure at once")}
      ${Wl({label:"Decorations cast beforehand by at most",at:"/days/cast_beforehand",unit:"days",optional:!0,short:!0})}
    </div>
    ${GD()}
    ${$(g("studio","/days"),"/making")===void 0&&g("studio","/days")!==void 0?s`<p class="hint">Without the hours of a making day these are of no use.</p>`:u}`}var GD=()=>Je({of:"studio",at:"/days/one_lye_a_day",name:"the shared lye",title:"One pot of lye solution for several batches of a day",add:"Make one pot of lye solution for a day's batches",blank:{holds:"",saves:""},body:()=>{let e=(t,n,o,i={})=>Wl({label:n,at:`/days/one_lye_a_day/${t}`,unit:o,short:!0,...i});return s`<p class="hint">Made the evening before and shared by weight, where the batches' lyes are alike.</p>
        <div class="row">
          ${e("holds","Pot holds","l",{hint:"To the brim; filled to half."})}
          ${e("saves","Each further batch takes less by","min")}
          ${e("pot_tare","Empty pot","g",{optional:!0,hint:"Where the full one is weighed with it."})}
        </div>`}});var YD={pour:[{name:"overpour",label:"Overpour, of what is in the pieces",unit:"%"},{name:"pot",label:"Left in the pot",unit:"g"},{name:"jugs",label:"Left in the jugs",unit:"g"},{name:"test_piece",label:"Test piece",unit:"g"}],pipe:[{name:"bag",label:"Left in the bag",unit:"g"},{name:"bowl_and_whisk",label:"Left in bowl and whisk",unit:"g"},{name:"tip",label:"Left in the tip",unit:"g",optional:!0},{name:"each_bag_change",label:"Lost at each bag change",unit:"g",optional:!0}]},Cw=e=>({run:e,studio:e}),Ap=e=>Cw(`/losses/${e}`);function Dp(e,t){return YD[e].map(({name:n,label:o,unit:i,optional:r})=>Pe(Cw(`/losses/${e}/${n}`),{label:t?`${t}: ${o.toLowerCase()}`:o,unit:i,short:!0,optional:r}))}var Pp={holds:"",paid:""},El=e=>({of:"studio",at:`/packs/${W(e)}`,in_order:!0,and:(t,n)=>n?t:bi(Tn(t,"/packs"),[`/serves_as/${W(e)}`])});function Iw(e){let t=a.fats.find(n=>n.id===e||n.name===e);return t?[t.id,t.name,t.inci,...t.also_called]:[e]}function Ww(e,t){let n=new Set(Iw(t).map(o=>o.toLowerCase()));return pe("studio",e).find(o=>n.has(o.toLowerCase()))}var qo=e=>Ww("/packs",e),Ew=e=>Rt().includes(e)||a.fats.some(t=>t.id===e)?"g":void 0,Nw="money packs";function jw(e){return s`${pe("studio","/packs").map(t=>ZD(t,e))}
  ${Ho({key:"pack",label:"Which material comes in packs?",offers:Rt(),taken:t=>qo(t)!==void 0,take:Nl})}`}function ZD(e,t){let n=El(e),o=ee(e);return s`<div class="part" role="group" aria-label="Packs of ${o}">
    <p class="part-title">${o}</p>
    ${k(n).map((i,r)=>eP(n,r,o,Ew(e),t))}
    <div class="row">
      ${G(n,s`Another pack of ${o}`,()=>N(n,Pp,`A pack of ${o}`))}
      ${f({of:"studio",label:"Lost beside the batch",at:`/waste/${W(e)}`,unit:"%",optional:!0,takes_part:!0,short:!0})}
      ${XD(e)}
    </div>
  </div>`}var Lw=e=>`/serves_as/${W(e)}`;function XD(e){let t=Lw(e),n=A("studio",t),o=new Set(Iw(e)),i=[...new Set([...Rt(),...pe("studio","/packs")])].filter(l=>!o.has(l)&&g("studio",Lw(l))===void 0),r=l=>d=>Tn(P(d,t,l||void 0),"/serves_as");return!n&&(Rt().some(l=>o.has(l))||!i.length)?u:$e({label:"Another make of",of:"studio",at:t,answers:i.map(l=>[l,ee(l)]),unsaid:"nothing: a material of its own",optional:!0,take:l=>lt("studio",`${ee(e)}: ${l?ee(l):"a material of its own"}`,r(l))})}function eP(e,t,n,o,i){let r=`${e.at}/${t}`,l=(c,p,m={})=>f({of:"studio",label:p,at:`${r}/${c}`,short:!0,...m}),d=g("studio",`${r}/density`)!==void 0||We("studio",`${r}/holds`);return s`<div class="row" id=${C(e,t)} role="group" aria-label="Pack ${t+1} of ${n}">
    ${l("holds","One pack holds",{unit:o,hint:o?void 0:"Such as 50 pieces, or 1 kg"})}
    ${l("paid","Paid for it",{told:i})} ${tP(r)}
    ${l("as_of","Day of the price",{optional:!0,date:!0})}
    ${d?l("density","Density of what it holds",{unit:"g/ml",optional:!0}):u}
    ${U(e,t,`pack ${t+1} of ${n}`)}
  </div>`}function tP(e){let t=`${e}/from`,n=pe("studio","/sellers");return n.length?$e({label:"From",of:"studio",at:t,answers:n.map(o=>[o,o]),unsaid:"not given",optional:!0}):f({of:"studio",label:"From",at:t,optional:!0,short:!0})}function Nl(e){let t=`/packs/${W(e)}`,[n,o]=[`/prices/${W(e)}`,`/money/prices/${W(e)}`],i=Di().length?g("run",o):void 0,r=[i,g("studio",n)].flatMap(oP),l=r.length?[...r,Pp]:[Pp];Bt([["studio",c=>nP(P(bi(c,[n]),t,l))],...i!==void 0?[["run",c=>bi(c,[o])]]:[]]),B(r.length?`The price of ${ee(e)} is its first pack now`:`${ee(e)} added`),Ee("studio",Nw),z(It(C(El(e),l.length-1)))}var nP=e=>$(e,"/currency")?e:P(e,"/currency",cl());function oP(e){let t=$(e,"/paid");if(!t)return[];let n=$(e,"/confirmed");return[{holds:$(e,"/for")??"",paid:t,...n===void 0?{}:{confirmed:n}}]}var Hw=e=>s`<button
    type="button"
    aria-label="Another pack size of ${ee(e)}"
    @click=${()=>Nl(e)}
  >
    Another pack size
  </button>`;function qw(e){let t=qo(e),n=X("studio",El(t).at).length,o=()=>{Ee("studio",Nw),z(It(C(El(t),0)))};return s`<div class="row">
    <p>${ee(e)}: by ${n===1?"its pack":`its ${n} packs`}</p>
    <button type="button" aria-label="To its packs: ${ee(e)}" @click=${o}>To its packs</button>
  </div>`}function Uw(){let e=t=>`/have/${W(t)}`;return s`${pe("studio","/have").map(t=>{let n=Ew(t),o=n?void 0:"Such as 12 pieces, or 1 kg";return s`<div class="row">
      ${f({of:"studio",label:ee(t),at:e(t),unit:n,hint:o,short:!0})}
      ${Fo("studio","/have",t,ee(t))}
    </div>`})}
  ${Ho({key:"have",label:"Which material stands on the shelf?",offers:Rt(),taken:t=>Ww("/have",t)!==void 0,take:t=>E("studio",`${ee(t)} added`,e(t),"",ne("studio",e(t)))})}`}var zw=({key:e})=>`money ${e}`;function Vw(){if(!qt())return u;let e=rP(cl());return!xn()&&e.some(t=>a.open.has(`folded studio ${zw(t)}`))&&nl(),s`<section class="questions money of-studio" aria-label="Buying and selling">
    <h3>Buying and selling</h3>
    ${iP()}
    <div class="folds">
      ${e.map(t=>D({of:"studio",name:zw(t),pointers:t.pointers,summary:s`<span>${t.title}${t.told?s`<small>${t.told}</small>`:u}</span>`,body:t.body}))}
    </div>
  </section>`}var iP=()=>g("run","/money/currency")===void 0?u:s`<div class="row">
        ${Uo({label:"Currency of the studio",at:"/currency",optional:!0,short:!0})}
      </div>`,Uo=e=>f({...e,of:"studio"}),jl=e=>pe("studio",e).map(ee).join(", ");function rP(e){let t=(i,r,l={})=>Uo({label:r,at:i,told:e,short:!0,...l}),n=(i,r)=>t(i,r,{optional:!0,takes_part:!0}),o=(i,r="")=>{let l=A("studio",i);return l&&`${l}${r}`};return[{key:"packs",title:"Packs",pointers:["/packs","/waste","/serves_as"],told:jl("/packs"),body:()=>jw(e)},{key:"sellers",title:"Sellers",pointers:["/sellers"],told:jl("/sellers"),body:()=>aP(t)},{key:"have",title:"On the shelf",pointers:["/have"],told:jl("/have"),body:Uw},{key:"packaging",title:"Packaging",pointers:["/packaging"],told:k(Wi).map(i=>ee(String($(i,"/material")))).join(", "),body:uP},{key:"work",title:"Work",pointers:["/work"],told:o(Wo("paid_an_hour"),` ${e} an hour`),body:()=>cP(t)},{key:"overhead",title:"Overhead",pointers:["/overhead"],told:o("/overhead/each_batch",` ${e} each batch`),body:()=>s`<p class="hint">Rent, power, cleaning and the like.</p>
          <div class="row">
            ${n("/overhead/each_batch","Each batch")} ${n("/overhead/each_piece_made","Each piece made")}
          </div>`},{key:"tax",title:"Tax on sales",pointers:["/tax"],told:o("/tax/rate"),body:pP},{key:"fees",title:"Fees of selling",pointers:["/fees"],told:o("/fees/of_price"," of the price"),body:()=>s`<div class="row">
          ${Uo({label:"Of what the buyer pays",at:"/fees/of_price",unit:"%",optional:!0,takes_part:!0,short:!0})}
          ${n("/fees/each_order","Each order")}
        </div>`},{key:"asking",title:"Ways of selling",pointers:["/asking","/price_endings"],told:jl("/asking"),body:()=>mP(t)}]}var sP=e=>(t,n)=>Object.entries(t.packs??{}).reduce((o,[i,r])=>r.reduce((l,{from:d},c)=>d===e?P(l,`/packs/${W(i)}/${c}/from`,n):l,o),t);function aP(e){let t=(n,o)=>`/sellers/${W(n)}/${o}`;return s`${pe("studio","/sellers").map(n=>s`<div class="part" role="group" aria-label=${n}>
        <div class="part-head">
          <p class="part-title">${n}</p>
          ${Fo("studio","/sellers",n)}
        </div>
        <div class="row">
          ${Sr({of:"studio",at:"/sellers",name:n,label:"Seller's name",also:sP(n)})}
          ${e(t(n,"postage"),"Postage of an order",{optional:!0,hint:"0 if you fetch it"})}
          ${e(t(n,"postage_free_from"),"Free from",{optional:!0})}
          ${Uo({label:"From ordering to having it",at:t(n,"lead_time"),unit:"days",optional:!0,short:!0})}
        </div>
      </div>`)}
  ${wi({of:"studio",at:"/sellers",label:"Another seller, by name",add:"Add the seller",blank:{},then:n=>ne("studio",t(n,"postage"))})}`}var Wi={of:"studio",at:"/packaging"},lP=e=>!Rt().includes(e)&&!a.fats.some(t=>t.id===e);function uP(){let e=t=>k(Wi).some(n=>$(n,"/material")===t);return s`<p class="hint">What goes round each piece that is sold. Its price is that of its pack.</p>
    ${k(Wi).map((t,n)=>dP(String($(t,"/material")??""),n))}
    ${Ho({key:"packaging",label:"What goes round a piece?",offers:["/packs","/prices"].flatMap(t=>pe("studio",t)).filter(lP),taken:e,take:t=>N(Wi,{material:t,each_piece:""},t)})}`}function dP(e,t){let n=qo(e)!==void 0||g("studio",`/prices/${W(e)}`)!==void 0;return s`<div class="row" id=${C(Wi,t)}>
    ${Uo({label:`${ee(e)}, each piece`,at:`/packaging/${t}/each_piece`,unit:"pieces",short:!0,hint:"How many, or a mass such as 3 g"})}
    ${n?u:s`<button type="button" aria-label="Say its price: ${e}" @click=${()=>Nl(e)}>
            Say its price
          </button>`}
    ${U(Wi,t,e)}
  </div>`}function cP(e){let t=g("studio","/work")!==void 0;return s`<div class="row">
      ${e(Wo("paid_an_hour"),"Paid an hour",{optional:!0,takes_part:!0,is_due:t})} ${ll()}
    </div>
    ${I("studio","/work")}`}var Jw=(e,t)=>T({of:"studio",question:e,at:`/tax/${t}`,chosen:A("studio",`/tax/${t}`)||void 0,answers:[["with tax","With tax"],["without tax","Without tax"]],puts:n=>n}),pP=()=>s`<p class="hint">Where you charge it and get back what you pay of it. If you are exempt, leave it out.</p>
    ${Je({of:"studio",at:"/tax",name:"the tax",title:"Tax on sales",add:"I charge tax",blank:{rate:""},body:()=>s`<div class="row">${Uo({label:"Rate",at:"/tax/rate",unit:"%",short:!0})}</div>
          ${Jw("The prices you pay are","prices_paid")} ${Jw("The prices you ask are","prices_asked")}`})}`,Kw=[["margin","A margin"],["markup","A markup"],["price","A price as set"]];function mP(e){let t=n=>`/asking/${W(n)}`;return s`${pe("studio","/asking").map(n=>fP(n,t(n),e))}
  ${wi({of:"studio",at:"/asking",label:"Another way, such as retail",add:"Add the way",blank:{},then:n=>ne("studio",t(n))})}
  ${hP(e)}`}function fP(e,t,n){let o=g("studio",t)??{},i=Kw.map(([l])=>l).find(l=>o[l]!==void 0),r=l=>Uo({label:l,at:`${t}/${i}`,unit:"%",short:!0});return s`<div class="part" role="group" aria-label=${e}>
    <div class="part-head">
      <p class="part-title">${e}</p>
      ${Fo("studio","/asking",e)}
    </div>
    <div class="row">${Sr({of:"studio",at:"/asking",name:e,label:"What you call it"})}</div>
    ${T({of:"studio",question:"Its price comes by",at:t,chosen:i,answers:Kw,puts:l=>({[l]:""}),then:l=>`${t}/${l}`})}
    ${i?s`<div class="row">
            ${i==="price"?n(`${t}/price`,"Price of a piece"):r(i==="margin"?"Margin, of the price":"Markup, on the cost")}
          </div>`:u}
  </div>`}var ps={of:"studio",at:"/price_endings"},hP=e=>s`<p class="question">A price ends in</p>
    ${k(ps).map((t,n)=>s`<div class="row" id=${C(ps,n)}>
          ${e(`/price_endings/${n}`,`Ending ${n+1}`,{hint:"Such as 0.90"})}
          ${U(ps,n,`ending ${n+1}`)}
        </div>`)}
    ${G(ps,"Add an ending",()=>N(ps,"","An ending"))}`;var gP=e=>se()&&qo(e)===void 0&&Di().length>0;function Qw(){if(!qt())return s`<button type="button" @click=${_P}>Add what you paid</button>`;let e=(t,n)=>{let o=`/${W(t)}/${n}`;return{run:dl.run+o,studio:dl.studio+o}};return s`<div class="row">
      ${Pe(cn,{label:"Currency",short:!0,hint:"Its ISO 4217 code, such as EUR."})}
    </div>
    <div class="prices">
      ${Rt().map(t=>qo(t)===void 0||g("run",e(t,"paid").run)!==void 0?s`<div class="row">
              ${Pe(e(t,"paid"),{label:`${ee(t)}, paid`,optional:!0,takes_part:!0,short:!0})}
              ${Pe(e(t,"for"),{label:`for how much ${ee(t)}`,unit:"g",optional:!0,takes_part:!0,short:!0})}
              ${gP(t)&&on(e(t,"paid"))?Hw(t):u}
            </div>`:qw(t))}
    </div>
    ${Rt().length?u:s`<p class="hint">The materials stand here as soon as there are figures.</p>`}`}function _P(){let e=se()?"studio":"run",t=e==="studio"?cn.studio:cn.run;E(e,"Prices added",t,"",ne(e,t))}var Ei=e=>({run:e,studio:e}),Op=e=>({run:`/pipe/${e}`,studio:`/${e}`}),$P=Ei("/scales"),Gw=Ei("/spoilage"),bP=Ei("/pots");function Mp(e){return tt({name:"studio",title:"My studio",result:be(wP()),about:[["studio",""],["run","/losses"],["run","/scales"],["run","/spoilage"],["run","/pots"],["run","/money"],["run","/pipe/bowl"],["run","/pipe/bag_holds"],["run","/pipe/lye_spoon"]],form:()=>yP(e)})}function wP(){let e=a.beside.studio?.file;return e?s`What is the same in every run, kept in ${e}.`:s`Scales, losses and whatever else is the same in every run; kept in this run so far.`}function yP(e){let t=vP(e),n=[...t.flatMap(o=>o.all),...et()?[ja]:[]];return s`${se()?u:s`<p class="choice">
              <button type="button" class="strong" @click=${()=>{Td(n)}}>
                Keep these in my studio
              </button>
            </p>
            <p class="hint">
              They go into studio.json beside your runs; every run then takes from it what it does not say. Packs and
              sellers, your work, tax, fees and ways of selling can then be kept there too.
            </p>`}
    <div class="studio-sections">
      ${t.map(({title:o,all:i,body:r})=>s`<section class="questions" aria-label=${o}>
            <div class="part-head">
              <h3>${o}</h3>
              ${eo(o,i)}
            </div>
            ${r()}
          </section>`)}
    </div>
    ${se()?s`${Vw()} ${pw()} ${Fw()}`:u}`}function vP(e){let t=ut(),n=[{title:"Scales",all:[$P],body:kP},{title:"Losses",all:[Ap("pour"),...t?[Ap("pipe")]:[]],body:()=>xP(t,e)},{title:"Rejects",all:[Gw],body:RP},{title:"Pot and lye jug",all:[bP],body:SP},{title:"Moulds owned",all:Yw().map(({shared:o})=>o),body:DP},{title:"Prices paid",all:Di(),body:Qw}];return t&&n.splice(4,0,{title:"Bowl, bag, spoon",all:["bowl","bag_holds","lye_spoon"].map(Op),body:AP},{title:"Weigh-cups",all:[],body:R_}),se()&&g("run","/label")===void 0&&n.push({title:"Where it is sold",all:[Ci],body:yp}),n}function kP(){let e=(t,n)=>s`${Pe(Ei(`/scales/${t}/step`),{label:`${n}, smallest step`,unit:"g",short:!0,term:t==="large"?"scale_step":void 0})}
    ${Pe(Ei(`/scales/${t}/most`),{label:`${n}, most it weighs`,unit:"g",short:!0})}`;return s`<div class="row">${e("large","Large scale")} ${e("fine","Fine scale")}</div>
    <p class="hint">With one scale only, give it in both places.</p>`}function xP(e,t){return s`<div class="row">
      ${Dp("pour",e?"Base":void 0)} ${e?Dp("pipe","Topping"):u}
    </div>
    ${t?TP(t):u}`}function TP({pour:e,pipe:t,...n}){let o=_e({pour:e,pipe:t,...n}),i=(r,{in_pieces_g:l,lost_g:d})=>`${r}: ${O(j(a.units,l))} in the pieces, ${O(j(a.units,d))} lost.`;return s`<p class="aside of-plan">
    ${o?`In ${o}. `:""}${i("Base",e)} ${t?i("Topping",t):""}
  </p>`}var RP=()=>Pe(Gw,{label:"Rejects",unit:"%",short:!0,optional:!0,term:"rejects"});function SP(){let e=(t,n,o)=>Pe(Ei(`/pots/${t}`),{label:n,unit:"l",optional:!0,takes_part:!0,short:!0,hint:o});return s`<div class="row">
    ${e("holds","Pot for the base holds","To the brim; filled to two thirds. Left blank, it sets no limit.")}
    ${e("lye_jug","Lye jug holds","To the brim; filled to half.")}
  </div>`}function AP(){let e=(n,o,i,r=!1)=>Pe(Op(n),{label:o,unit:i,short:!0,optional:!0,is_due:r,takes_part:n!=="bag_holds"}),t=n=>on(Op(n))!==void 0;return s`<div class="row">
    ${e("bowl/holds","Bowl holds","l",t("bowl/whisk_needs"))}
    ${e("bowl/whisk_needs","Smallest unwhipped amount the whisk reaches","ml")}
    ${e("bag_holds","One bag holds","ml")}
    ${e("lye_spoon/holds","Lye spoon holds","ml",t("lye_spoon/time_between"))}
    ${e("lye_spoon/time_between","From one spoonful to the next","s",t("lye_spoon/holds"))}
  </div>`}function Yw(){return["/pour",...k(Ae).map((t,n)=>Bi(n))].flatMap(t=>{let n=A("run",`${t}/mould`);return n?[{mould:n,shared:{run:Ob(t),studio:`/moulds_owned/${W(Rd(n))}`}}]:[]})}function DP(){return s`<div class="row">
    ${Yw().map(({mould:e,shared:t})=>{let n=a.files?.moulds.find(r=>r.file===e)?.name??e,o=on(t)===void 0?Sp(e):void 0,i=()=>{Bw(e,`/moulds_owned/${W(Rd(e))}`)};return s`${Pe(t,{label:`${n}, owned`,count:!0,optional:!0,short:!0,hint:o===void 0?"Else as many as the mould's own file says.":`The mould's own file says ${o}.`})}
      ${o!==void 0&&se()?s`<button type="button" aria-label="Move it into my studio: ${o} of ${n}" @click=${i}>
              Move it into my studio
            </button>`:u}`})}
  </div>`}function Bp(e){let t=e&&yi(e);return s`${OP(e)}
    <div class="set-up">${Zw(t)} ${PP()} ${Mp(t)}</div>`}function Zw(e){return s`${vw(e)} ${ut()?xw(e):u}
  ${tw()?iw(e):u} ${nw()?sw(e):u}
  ${et()?dw(e):u} ${Pw(e)} ${wp()?cw(e?.whole):u}`}function PP(){return s`<section class="lane unused" aria-label="What may be added">
    <div class="choice">
      ${ut()?u:s`<button type="button" @click=${S_}>Add a topping</button>${A_()}`}
      ${jb()} ${P_()}
      ${wp()?u:s`<button type="button" @click=${Jb}>Draft the label</button>`}
    </div>
  </section>`}function Xw(e=u){return s`<div class="row">
    ${f({label:"Pieces to sell",at:"/sell",count:!0,short:!0})}
    ${$i("Mould","/pour/mould",a.files?.moulds)}
    ${$i("Base","/pour/formula",a.files?.formulas)}
    ${ut()?$i("Topping","/pipe/formula",a.files?.formulas):u} ${e}
  </div>`}function OP(e){return s`<section class="order-of" aria-labelledby="run-title">
    ${typeof a.run.now.note=="string"?s`<p class="aside">${a.run.now.note}</p>`:u}
    ${Xw(e?MP(e):u)}
    <div class="batches">${e?Vb(e):u} ${gp()} ${$p()}</div>
  </section>`}function MP(e){let{sell:t,make:n,fillings:o,cavities:i,casts:r,batches:l}=e.pieces,d=Ne(e)?`${l} batches, ${V(o,"filling")}`:Sa(o,i);return F({key:"pieces.make",label:e.cut?"Bars to make":"Pieces to make",note:r!==n?`${r} ${e.cut?"loaves":"casts"}, ${d}`:d,shown:[String(n),t===n?"":`for ${t}`],size:"weigh",of:"pieces.make"})}function BP(){let t=(a.formulas.apart?["apart"]:["pour","pipe"]).filter(n=>a.formulas[n]).filter(FP);return[wt({part:"Run"},()=>[Xw(),gp(),$p()]),...t.map(n=>wt({part:String(a.formulas[n].now.name||"Formula")},()=>p$(n))),Zw(),Mp()]}var FP=(e,t,n)=>n.findIndex(o=>a.formulas[o]===a.formulas[e])===t;Sg(BP);var CP={danger:"\u26A0 Danger",stop:"Stop",warning:"Warning",caution:"Caution",note:"Note"};function ey(e){let t=r=>r.severity==="danger",n=[...e.cautions.filter(t),...e.cautions.filter(r=>!t(r))],o=r=>s`<ul>
      ${r.map(l=>s`<li class=${l.severity}><strong>${CP[l.severity]??l.severity}</strong> ${l.text}</li>`)}
    </ul>`,i=n.filter(r=>r.severity==="note");return s`<section class="watch" aria-labelledby="watch-title">
    <h2 id="watch-title">Cautions <small>worst first</small></h2>
    ${o(n.filter(r=>r.severity!=="note"))}
    ${i.length?s`<details ?open=${i.length<3}>
            <summary>${i.length} ${i.length===1?"note":"notes"}</summary>
            ${o(i)}
          </details>`:u}
  </section>`}var Fp="begin-title";function ty(e){let{record:t}=a;if(t.run!==a.run.file||t.version===void 0)return u;let{number:n,since:o}=e,i=o===void 0?void 0:Po(n,o);if(i)return LP(i,e);if(t.beginning?.batch===n)return IP(t.beginning,e);let r=()=>{hb(n),z(L(Fp)),requestAnimationFrame(()=>document.querySelector(".begin-record.asked")?.scrollIntoView({block:"nearest"}))};return s`<div class="begin-record">
    <button type="button" class=${e.is_due?"strong":""} @click=${r}>Lye is mixed: begin the record</button>
  </div>`}function LP(e,{show:t}){let{told:n}=a.record,o=()=>{mr(e.begun.id),t()};return s`<div class="begin-record is-begun">
    ${Dl(e)}
    <button type="button" class="strong" @click=${o}>Note what happens</button>
    ${n?.batch===e.begun.id&&n.remarks.length?s`<ul class="begin-remarks" role="status">
            ${n.remarks.map(i=>s`<li>${i}</li>`)}
          </ul>`:u}
  </div>`}function IP(e,t){let{number:n,words:o,seen:i,is_struck:r}=t,l=Po(n),{complaint:d,is_asking:c}=e,p=!r&&!c&&!Nn(n);return s`<div class="begin-record asked" role="group" aria-labelledby=${Fp}>
    <p id=${Fp} tabindex="-1"><b>Begin the record of ${o}?</b> Its plan is kept with it as it is weighed.</p>
    ${l?WP(l,t):u}
    <div class="row">
      <div class="field">
        <label for="code-to-begin">Code on the mould</label>
        <input
          id="code-to-begin"
          autocomplete="off"
          .value=${M(e.code)}
          aria-describedby="code-to-begin-said"
          @input=${m=>gb(m.target.value)}
        />
        <p class="hint" id="code-to-begin-said">Left blank: the day and the next letter.</p>
      </div>
      <button type="button" class="strong" ?disabled=${!p} @click=${()=>{sp(i)}}>
        ${c?"Beginning ...":l?"Begin another making":"Begin the record"}
      </button>
      <button type="button" @click=${rp}>Not yet</button>
    </div>
    ${r?s`<p class="complaint">The weights are not those of what is typed.</p>`:u}
    ${d?EP(d,i):u}
  </div>`}var WP=(e,{show:t})=>s`<p>
      There is a record of it already, <b>${e.begun.code}</b>: ${Xr(e)}. If this is the same soap, go on
      in that one.
    </p>
    <p>
      <button
        type="button"
        @click=${()=>{rp(),mr(e.begun.id),t()}}
      >
        Go on in ${e.begun.code}
      </button>
    </p>`;function EP(e,t){let n=e.choices??[];return s`<div role="alert">
    <p class="alarm">
      ${n.length||e.field==="begin"?`${e.problem}.`:`${H(e)}.`}
    </p>
    ${n.map(o=>s`<button type="button" class="answer" @click=${()=>{_b(o,t)}}>
          ${NP(o)}
        </button>`)}
  </div>`}function NP(e){let{confirmed:t,lot:n}=e;return e["beyond-stock"]?`There is more than the records say: take it of lot ${e["beyond-stock"]}`:n?`Take ${n}`:`It is so: ${t??""}`}function ny(e,t){let n=e?.batches.findIndex(({numbers:l})=>l.includes(t))??-1;if(!e||n<0)return;let o=e.batches[n],i=t===1,r=o.weigh_out.filter(({vessel:l})=>l!=="melt"||i);return{plan:e,batch:o,place:`batches.${n}`,vessels:r,mark:o.mark}}function Ni(e){let t=En(e);return t?.finished_at?"done":t||Nn(e)?"under way":"not begun"}var jP=()=>Math.max(a.plan?.pieces.batches??0,...a.bench.batches.map(({batch:e})=>e));function HP(e){let{chosen:t}=a.bench;if(t!==void 0&&t<=e)return t;let n=Array.from({length:e},(i,r)=>r+1),o=i=>n.find(r=>Ni(r)===i);return o("under way")??o("not begun")??1}function Cp(){let e=jP(),t=HP(e),n=En(t),o=ny(a.plan,t);return{number:t,of:e,kept:n,planned:o,weights:n?ny(n.plan,t):o}}var pn=({kept:e})=>!e&&a.is_old,ji=({plan:e,batch:t})=>e.cautions.filter(({severity:n,batch_pieces:o})=>n==="danger"&&(o===void 0||o===t.pieces));var qP=6,UP={"not begun":"\u25CB","under way":"\u25D0",done:"\u25CF"};function iy({number:e,of:t}){if(t<2)return u;let n=Array.from({length:t},(i,r)=>r+1),o=i=>`Batch ${i}, ${Ni(i)}`;return t>qP?s`<select
      aria-label="Which batch is weighed"
      @change=${i=>oy(Number(i.target.value))}
    >
      ${n.map(i=>s`<option value=${i} ?selected=${i===e}>${o(i)}</option>`)}
    </select>`:ue("Which batch is weighed",String(e),n.map(i=>[String(i),s`<span class="status" aria-hidden="true">${UP[Ni(i)]}</span> ${i}<small>
          ${Ni(i)}</small
        >`]),i=>oy(Number(i)))}function oy(e){qf(e),B(`Batch ${e}, ${Ni(e)}`)}var Hl="";function ry(e){let{kept:t,number:n}=e;if(!t)return u;if(t.finished_at)return zP(e,t.finished_at);let i=(e.weights?.vessels??[]).flatMap(l=>l.rows).filter(({key:l})=>!jn(n,l).is_done).length,r=()=>i?sy(t.id):void Ou(n);return s`<div class="batch-end">
    <p class="aside">Begun ${ly(t.begun_at)}; its weights stay as they were then.</p>
    ${Hl===t.id?ay(`${i===1?"1 row is":`${i} rows are`} not ticked.`,"The batch is done all the same",()=>{Ou(n)}):s`<button type="button" class=${i?"":"strong"} ?disabled=${Nn(n)} @click=${r}>
            This batch is done
          </button>`}
  </div>`}function zP({kept:e,number:t},n){let{id:o}=e;return s`<div class="batch-end">
    <p><b>✓ This batch is done</b>, ${ly(n)}.</p>
    ${Hl===o?ay("What was ticked of it will be put away.","Put it away and weigh this batch once more",()=>{ir(t)}):s`<button type="button" @click=${()=>sy(o)}>Start this batch anew</button>`}
  </div>`}function sy(e){Hl=e,Q(),z(L("batch-stays"))}function ay(e,t,n){let o=()=>{Hl="",Q(),z(L("run-title"))};return s`<p><b>${e}</b></p>
    <div class="row">
      <button type="button" class="strong" id="batch-stays" @click=${o}>Leave it as it is</button>
      <button type="button" @click=${()=>(o(),n())}>${t}</button>
    </div>`}var JP=new Intl.DateTimeFormat("en-GB",{day:"numeric",month:"long",hour:"2-digit",minute:"2-digit"}),ly=e=>JP.format(new Date(e));var KP={pour:"Base",pipe:"Topping"},uy=e=>new Map(e.flatMap(t=>t.rows.map(n=>[n.key,{row:n,vessel:t}])));function dy(e,t){let[n,o]=[uy(e),uy(t)],i=[...e,...t].some(({batter:p})=>p==="pipe"),r,l=({row:p,vessel:m})=>{let _=!i||m.batter===r;return r=m.batter,(_||!r?"":`${KP[r]}: `)+p.name+(p.adding?` for ${p.adding}`:"")},d=[...n].flatMap(([p,m])=>{let _=o.get(p)?.row;return _?.shown===m.row.shown?[]:[`${l(m)} ${m.row.shown}, ${_?`now ${_.shown}`:"now left out"}`]}),c=[...o].filter(([p])=>!n.has(p)).map(([,p])=>`${l(p)}, now ${p.row.shown}`);return[...d,...c]}var Lp=3,Ip=new Map,Wp="";function VP(e){let{kept:t,weights:n,planned:o,of:i}=e;if(!t||t.finished_at||!n)return;let{complaint:r}=a;if(r&&!Gp(r))return{told:[],dangers:[],refusal:"what is wrong stands above",mark:H(r)};if(!o){if(!a.plan)return;let p=i>1?`the run has no batch ${e.number} any more`:"the run has no such batch any more";return{told:[],dangers:[],refusal:p,mark:p}}if(o.mark===n.mark)return;let l=dy(n.vessels,o.vessels),d=new Set(ji(n).map(({text:p})=>p)),c=ji(o).flatMap(({text:p})=>d.has(p)?[]:[p]);return l.length||c.length?{told:l,dangers:c,mark:o.mark}:void 0}function cy(e){let t=VP(e),{kept:n}=e;if(!t||!n)return u;if(Ip.get(n.id)===t.mark)return YP(n.id);let o=t.dangers.length>0||t.refusal!==void 0;return s`<div class="changed ${o?"red":""}" role=${o?"alert":"status"}>
    <p>
      <b>The run has changed since this batch was begun; its weights stay.</b>
      ${QP(t)}
    </p>
    ${GP(t)}
    ${t.dangers.map(i=>s`<p class="danger"><strong>${st}</strong> As it is now: ${i}</p>`)}
    ${Wp===n.id?eO(e):ZP(e,t)}
  </div>`}function QP({told:e,refusal:t}){if(t!==void 0)return s`<strong>No weights can be given as it is now:</strong> ${t}.`;let n=e.length-Lp;return s`${e.slice(0,Lp).join("; ")}${n>0?` and ${n} more.`:"."}`}var GP=({told:e})=>e.length>Lp?s`<details>
        <summary>All ${e.length} changes</summary>
        <p>${e.join("; ")}.</p>
      </details>`:u;function YP(e){return s`<div class="changed passed">
    <p>The run has changed since this batch was begun; its weights stay.</p>
    <button type="button" @click=${()=>(Ip.delete(e),Q())}>What has changed</button>
  </div>`}function ZP(e,{mark:t,refusal:n}){let{id:o}=e.kept;return s`<div class="row">
    <button type="button" class="strong" @click=${()=>{Ip.set(o,t),Q(),z(L("run-title"))}}>Keep weighing</button>
    ${n===void 0?s`<button type="button" @click=${()=>XP(e)}>Start this batch anew</button>`:u}
  </div>`}function XP(e){let{ticks:t,weigh_cup:n,id:o}=e.kept;if(!Object.keys(t).length&&n===void 0)return void ir(e.number);Wp=o,Q(),z(L("keep-weighing"))}function eO(e){let t=Object.keys(e.kept.ticks).length,n=()=>{Wp="",Q(),z(L("run-title"))},o=()=>{n(),ir(e.number)};return s`<p>
      <b>${t===1?"The 1 tick":`All ${t} ticks`} of this batch will be put away</b>, and what is in the
      vessels already was weighed by the old weights.
    </p>
    <div class="row">
      <button type="button" class="strong" id="keep-weighing" @click=${n}>Keep weighing</button>
      <button type="button" @click=${o}>Put the ticks away and start anew</button>
    </div>`}var py=({text:e})=>s`<p class="danger"><strong>${st}</strong> ${e}</p>`;function my(e){let t=new Set(a.dangers.run.map(({text:o})=>o)),n=ji(e).filter(({text:o})=>!t.has(o));return n.length?s`<div class="dangers" role="alert">${n.map(py)}</div>`:u}var tO=({vessel:e})=>["lye","lye_pot","share"].includes(e),nO=({batter:e},t)=>!e||!t.batter||e===t.batter;function fy(e,t){if(!tO(t))return u;let n=ji(e).filter(o=>nO(o,t));return n.length?s`<div class="dangers">${n.map(o=>s`${py(o)} ${oO(o)}`)}</div>`:u}function oO({batter:e,topic:t}){return!e||t==="heat"?s`<button type="button" class="to-cause" @click=${rO}>To the cautions</button>`:s`<button type="button" class="to-cause" @click=${()=>iO(e)}>
    To the superfat of the ${e==="pour"?"base":"topping"}
  </button>`}function iO(e){Ye(e),requestAnimationFrame(()=>z(ne(e,"/superfat")))}function rO(){h({view:"watch"}),z(L("watch-title"))}var Ep=(e,t)=>s`<p class="do ${pn(e)?"old":""}">${t}</p>`;function hy(e,{batch:t,plan:n}){let{below_brim_mm:o,mass_each_g:i}=t.pour,r=o<.05?"Pour to the brim":`Pour to ${O(Se(a.units,o))} below the brim`;return Ep(e,s`${r}, <b>${O(j(a.units,i))}</b> ${n.cut?"the loaf":"each"}.`)}function gy(e,{batch:t}){let n=t.pipe?.whippings[0]?.readings.find(o=>o.planned);return n?Ep(e,s`Whip until the level weigh-cup holds <b>${O(j(a.units,n.net_g))}</b>.`):u}function _y(e,{batch:t}){let{pipe:n}=t;return n?Ep(e,s`Pipe <b>${R(n.volume_each_ml,0)} ml</b> on each, ${O(j(a.units,n.mass_each_g))} at the
      planned whipped density.`):u}function $y(e,{shown:t,beside:n}){if(e==="both")return[t,n];let o=e==="us"?"oz":"g";return[$t(n)===o?n:t,""]}function by(e,t,n){if(t.vessel==="share"&&!e.batch.lye_pot&&n.role==="lye_solution")return aO(e,t,n);let o=sO(e,t,n);return o===void 0?void 0:{place:o}}function sO({batch:e,plan:t,place:n,vessels:o},i,r){switch(i.vessel){case"fats":case"lye":case"batter":return yy(i,r,e,n);case"layers":return uO(r,e.pour.layers??[],`${n}.pour.layers`);case"dust":return Np(r.name,e.dust,`${n}.dust`);case"lye_pot":return r.role==="water"||r.role==="ice"?`${n}.lye_pot.water_g`:Np(r.name,e.lye_pot?.alkalis??[],`${n}.lye_pot.alkalis`);case"melt":{let l=o.filter(d=>d.vessel==="melt");return l.length===t.decorations.length?`decorations.${l.indexOf(i)}.make_g`:void 0}case"share":return lO(i,r,e,n)}}function aO({vessels:e},t,n){let o=e.find(r=>r.vessel==="lye"&&r.key===t.key.replace(/\.share$/,".lye"));return o?{working:{of:t.key,formula:"all of the lye solution = all that was weighed for it; what evaporated since is made up with plain water",with:o.rows.map(({name:r,shown:l})=>({name:r,value:l,from:o.title})),comes_to:n.shown,sources:[]}}:void 0}var wy=({key:e})=>Number(/^pipe\.(\d+)\./.exec(e)?.[1]??1)-1;function lO(e,t,n,o){let i=(n.pipe?.whippings??[]).slice(0,wy(e)),r=e.batter==="pipe"?i.reduce((l,{count:d})=>l+d,1):0;return t.role==="lye_solution"?`${o}.lye_pot.shares.${r}.lye_g`:t.role==="water"?`${o}.lye_pot.shares.${r}.top_up_g`:yy(e,t,n,o,"lye")}function Np(e,t,n){let o=t.findIndex(i=>i.name===e);return o<0?void 0:`${n}.${o}.g`}function yy(e,t,n,o,i=e.vessel){let r=wy(e),[l,d]=e.batter==="pipe"?[n.pipe?.whippings[r],`${o}.pipe.whippings.${r}`]:[n.pour,`${o}.pour`],c=(l?.ingredients??[]).findIndex(({name:p,goes_into:m,role:_})=>m===i&&(p===t.name||t.role==="ice"&&_==="water"));return c<0?void 0:`${d}.ingredients.${c}.g`}function uO(e,t,n){let o=(t??[]).findIndex(({name:i})=>i===(e.adding??e.name));return o<0||!e.adding?o<0?void 0:`${n}.${o}.g`:Np(e.name,t[o].colours,`${n}.${o}.colours`)}function jp(e,t,n){let o=n.words.filter(({is_order:r})=>r),i=n.rows.every(({key:r})=>jn(e.number,r).is_done);return s`<section class="vessel ${n.vessel} ${i?"filled":""}" aria-labelledby=${vy(n)}>
    <div class="vessel-head">
      <h3 id=${vy(n)}>
        ${n.title}${n.times?s` <b>${n.times} times</b>`:u}${n.day_before?s` <b>the day before</b>`:u}${i?s` <span class="all-in">✓ all in</span>`:u}
      </h3>
      ${o.map(({text:r})=>s`<p class="vessel-order">${r}</p>`)}
    </div>
    ${fy(t,n)}
    ${Pa(n.rows,({key:r})=>r,r=>dO(e,t,n,r))}
  </section>`}var vy=({key:e})=>`vessel-${e.replaceAll(".","-")}`;function dO(e,t,n,o){let{is_done:i,is_waiting:r}=jn(e.number,o.key),[l,d]=$y(a.units,o),c=pn(e),m=[o.adding?`for ${o.adding}`:"",o.note].filter(Boolean).join(", ");return s`<div class="weigh ${o.role} ${i?"done":""} ${r?"waiting":""}">
    <label>
      <input
        type="checkbox"
        .checked=${M(i)}
        ?disabled=${e.kept?.finished_at!==void 0}
        @change=${_=>cO(e,t,o,_.target)}
      />
      <span class="name"
        >${o.name}${m?s` <small>${m}</small>`:u}${r?s` <small class="not-kept">not kept yet</small>`:u}</span
      >
      ${o.running_shown?s`<span class="running">total ${o.running_shown}</span>`:u}
      <span class="amount ${c?"old":""}"><b>${l}</b>${d?s` <i>${d}</i>`:u}</span>
    </label>
    ${pO(e,t,n,o)}
  </div>`}function cO(e,{mark:t},n,o){if(!pn(e))return Nf(e.number,t,n.key,o.checked);o.checked=!o.checked,B("Not ticked: what is struck through is not to be weighed.")}function pO(e,t,n,o){let{planned:i}=e,r=i?.mark===t.mark?i.vessels.find(({key:m})=>m===n.key):void 0,l=i&&r&&by(i,r,o);if(!l)return u;let d=`weigh.${e.number}.${o.key}`,c=a.open.has(d),p=`sum-${d.replaceAll(/[^\w]/g,"-")}`;return s`<button
      type="button"
      class="ask-how"
      aria-label="How the weight of ${o.name} is calculated"
      aria-expanded=${c?"true":"false"}
      aria-controls=${c?p:u}
      @click=${()=>He("open",d)}
    >
      ${c?"\u2013":"="}
    </button>
    ${c?s`<div class="sum" id=${p}>${"place"in l?bd(l.place):ba(l.working)}</div>`:u}`}function Hp(e,t){let n=e.flatMap(({title:o,words:i})=>i.filter(({is_order:r})=>!r).map(({text:r})=>({title:o,text:r})));return s`<details class="to-know">
    <summary>Superfat, heat and more to know</summary>
    ${t} ${n.map(({title:o,text:i})=>s`<p><b>${o}:</b> ${i}</p>`)}
  </details>`}function ky(e,t){let{planned:n,whip_today:o}=a;return!t||!n?void 0:(o?.of===n&&o.batch===e&&o.reading===t||mO(e,t),o?.batch===e&&o.reading===t?o:void 0)}var qp=!1;async function mO(e,t){let{planned:n}=a;if(qp||!n)return;qp=!0;let o={of:n,batch:e,reading:t},i={holds:$(n.run,"/pipe/whip/holds")??"",net:t};try{let r=await gs({...n,run:P(n.run,"/pipe/whip_now",i)});h({whip_today:{...o,...fO(r,e)}})}catch(r){if(!(r instanceof y))throw r;h({whip_today:{...o,complaint:H(r.complaint)}})}finally{qp=!1}}function fO(e,t){let n=e.batches.find(({numbers:o})=>o.includes(t));return n?{mark:n.mark,pieces:n.pipe?.whippings.map(o=>o.pieces_now)}:{}}var zp,Up,hO=e=>zp??($t(e)==="oz"||!e&&a.units==="us"?"oz":"g");function xy(e,t){let n=t.batch.pipe?.whippings??[];if(!n.some(l=>l.readings.length))return u;let o=So(e.number),i=hO(o),r=e.kept?.finished_at!==void 0;return s`<div class="cup">
    <div class="labelled"><label for="weigh-cup">Today's weigh-cup, net</label>${kn("weigh_cup")}</div>
    ${Lt("weigh_cup")}
    <div class="cup-row">
      <input
        id="weigh-cup"
        inputmode="decimal"
        autocomplete="off"
        .value=${M(Up??o)}
        ?disabled=${r}
        @input=${l=>Up=l.target.value}
        @change=${l=>_O(e,t,l.target.value,i)}
      />
      ${ue("Unit of the weigh-cup",i,[["g","g"],["oz","oz"]],gO)}
    </div>
    ${$O(e,t,n,o)} ${wO(t,n)}
  </div>`}function gO(e){zp=e,Q()}function _O(e,{mark:t},n,o){Up=void 0;let i=Ue(n)?`${n.trim()} ${o}`:n.trim();if(zp=void 0,i===So(e.number))return Q();if(pn(e))return B("Not taken: the weights are not those of what is typed."),Q();jf(e.number,t,i),e.kept&&ia(Po(e.number,e.kept.begun_at),i)}function $O(e,t,n,o){if(!o)return u;let i=ky(e.number,o);return i?i.complaint!==void 0?s`<p class="alarm" role="status">${i.complaint}</p>`:i.mark!==t.mark?s`<p class="today" role="status">The run has changed since this batch was begun: go by the table.</p>`:s`<div class="today" role="status">
    ${n.map((r,l)=>s`<p>${bO(r,i.pieces?.[l]??null)}</p>`)}
  </div>`:s`<p class="today" role="status">Asking how far this bowl goes ...</p>`}function bO({pieces:e,count:t},n){if(n===null)return u;let o=t>1?"Each of these bowls pipes":"This bowl pipes",i=e-n;return s`${o} <b>${V(n,"piece")}</b> now.
    ${i>0?s`<strong>Short by ${i} at this whip.</strong>`:`Enough for the ${e} to make.`}`}function wO(e,t){let n=e.plan.cut?"casts":"pieces";return s`<details class="cup-table">
    <summary>If the weigh-cup reads something else</summary>
    ${t.map(o=>s`<table class="readings">
          <caption>
            A bowl for ${o.pieces}
          </caption>
          <thead>
            <tr>
              <th scope="col">net</th>
              <th scope="col">overrun</th>
              <th scope="col">pipes, ${n}</th>
            </tr>
          </thead>
          <tbody>
            ${o.readings.map(i=>s`<tr class=${i.planned?"planned":""}>
                  <th scope="row">${O(j(a.units,i.net_g))}${i.planned?" (planned)":""}</th>
                  <td>${R(i.overrun_percent,0)} %</td>
                  <td>${e.plan.cut?i.casts:i.pieces}</td>
                </tr>`)}
          </tbody>
        </table>`)}
  </details>`}var ms="pour",Ty=()=>Cp().kept!==void 0;function Ry(e){Es(),Zs();let t=Cp(),n=a.bench.version!==void 0||a.bench.failed!==void 0;return s`<section class="weighing" data-part=${ms} aria-labelledby="run-title">
    ${yO(t)} ${kO(t)}
    ${t.weights&&n?s`${my(t.weights)} ${cy(t)} ${xO(t,t.weights,e)}`:u}
    ${t.weights&&n&&!Jp(t)?Ay(t,t.weights,e):u}
    ${ry(t)}
  </section>`}function yO(e){let{weights:t}=e;return s`<div class="weighing-head">
    <h1 id="run-title" tabindex="-1">${t?.plan.run??String(a.run.now.name??"")}</h1>
    ${t?s`<p class="which">${vO(e,t)}</p>`:u}
    <div class="row">
      ${f({label:"Pieces to sell",at:"/sell",count:!0,short:!0})} ${iy(e)}
    </div>
  </div>`}function vO(e,{plan:t,batch:n,vessels:o}){let i=o.flatMap(d=>d.rows),r=i.filter(({key:d})=>jn(e.number,d).is_done).length,l=e.of>1?`Batch ${e.number} of ${e.of}: `:"";return s`<b>${l}${Nt(t,n)}</b>, ${r} of ${i.length} weighed`}function kO({number:e,weights:t}){let{failed:n,unsent:o,told:i,complaints:r,version:l}=a.bench,d=o!==void 0&&Nn(e);return s`<div class="bench-told" role="status">
    ${i?.batch===e?s`<p class="alarm">${i.words}</p>
            <button type="button" @click=${Uf}>I have looked</button>`:u}
    ${d?s`<p class="alarm">
            <strong>Not kept yet:</strong> ${o}. What you tick is kept in this browser, and sent as soon as the
            program answers.
          </p>`:u}
    ${n!==void 0?s`<p class="alarm"><strong>What is ticked already could not be read:</strong> ${n}.</p>`:u}
    ${r.map(c=>s`<p class="alarm">${c}</p>`)}
    ${t||n!==void 0?u:s`<p class="hint">
            ${a.complaint?"No weights before this is corrected.":l===void 0?"Reading ...":""}
          </p>`}
  </div>`}function xO(e,t,n){let{vessels:o}=t,i=m=>o.filter(_=>_.batter===m),r=i(),l=r.filter(m=>m.day_before),d=r.filter(m=>!m.day_before),c=i("pipe").length>0,p=m=>m.map(_=>jp(e,t,_));return s`${PO(c,r)}
    <div class="batters ${c?"two":""}">
      ${ql("ahead","To have ready",p(l))}
      ${ql("base",c?"Base":"Batter",TO(e,t,i("pour"),l,n))}
      ${c?ql("topping","Topping",[...p(i("pipe")),AO(e,t),Hp(i("pipe"),SO(e,t))]):u}
      ${ql("after","At the end",p(d))}
    </div>`}var Sy=({vessel:e})=>e==="lye"||e==="lye_pot";function Jp(e){let n=(e.weights?.vessels??[]).filter(o=>Sy(o)&&o.batter!=="pipe").flatMap(o=>o.rows);return n.length>0&&n.every(({key:o})=>jn(e.number,o).is_done)}var Ay=(e,{plan:t,batch:n,mark:o},i)=>ty({number:e.number,words:`${e.of>1?`batch ${e.number} of ${e.of}`:"this batch"}, ${Nt(t,n)}`,seen:o,since:e.kept?.begun_at,is_struck:pn(e),is_due:Jp(e),show:i}),ql=(e,t,n)=>n.some(o=>o!==u)?s`<div class="part-of ${e}">
        <h2 id="weigh-${e}">${t}</h2>
        ${n}
      </div>`:u;function TO(e,t,n,o,i){let r=({vessel:p})=>p==="layers",l=p=>p.map(m=>jp(e,t,m)),d=n.filter(p=>!r(p)),c=d.map(Sy).lastIndexOf(!0);return[...l(d.slice(0,c+1)),Jp(e)?Ay(e,t,i):u,...l(d.slice(c+1)),hy(e,t),...l(n.filter(r)),Hp([...o,...n],RO(e,t))]}var Dy=(e,t,n=u)=>s`<p class=${pn(e)?"old":""}>
    <b>Superfat as weighed:</b> ${t.map(o=>Ze(o.superfat_percent.effective)).join(", ")} ${n}
  </p>`,RO=(e,{batch:t})=>Dy(e,[t.pour],Xn("superfat_as_weighed")),SO=(e,{batch:t})=>Dy(e,t.pipe?.whippings??[]),AO=(e,t)=>s`${gy(e,t)} ${xy(e,t)} ${_y(e,t)}`,DO={lye_pot:"Lye",melt:"Melt",dust:"Dust"};function PO(e,t){let n=[...new Set(t.flatMap(({vessel:i})=>DO[i]??[]))].join(", ").toLowerCase(),o=[["pour",e?"Base":"Batter"],...e?[["pipe","Topping"]]:[],...n?[["rest",n.replace(/^./,i=>i.toUpperCase())]]:[]];return o.length<2?u:(o.some(([i])=>i===ms)||(ms="pour"),s`<div class="narrow">${ue("What is shown",ms,o,OO)}</div>`)}function OO(e){ms=e,Q(),requestAnimationFrame(()=>document.querySelector(".batters")?.scrollIntoView({block:"start"}))}var Py=()=>s`${Si(Ty()?"No new weights can be given.":void 0)} ${Ry(()=>{pt("record")})}`;var MO={"set-up":Bp,watch:ey,money:sb,days:ob,mould:Sb,print:Pb};function Oy(e){let t=s`${Fs().map(o=>sn(o))} ${Bs().map(an)}`;if(e==="weigh")return s`${t} ${Py()}`;if(e==="record")return s`${t} ${vb(()=>{pt("weigh")})}`;let{plan:n}=a;return s`${t} ${Si()}
    <h1 id="run-title" tabindex="-1">${n?.run??String(a.run.now.name??"")}</h1>
    ${n?MO[e](n):BO(e)}`}function BO(e){return a.complaint?e==="set-up"?Bp():s`<p class="hint">No figures yet: the set-up tells what is missing.</p>`:s`<p class="hint">Reading the run ...</p>`}var FO=()=>{h({new_run:{name:"",mould:"",formula:"",sell:""}}),requestAnimationFrame(()=>document.getElementById("new-run-name")?.focus())};function By(){let e=a.new_run;if(!e)return s`<p class="choice"><button type="button" class="strong" @click=${FO}>New run</button></p>`;let{name:t,mould:n,formula:o}=e,i=Ha(e.sell),r=t.trim()&&n&&o&&i,l=()=>{de(async()=>{await la({name:t.trim(),mould:n,formula:o,sell:i}),h({new_run:void 0})})};return s`<section class="card" aria-labelledby="new-run">
    <h2 id="new-run">New run</h2>
    <div class="row">
      <div class="field">
        <label for="new-run-name" data-said="required">Name</label>
        <input
          id="new-run-name"
          .value=${M(t)}
          @input=${d=>v(e,{name:d.target.value})}
          autocomplete="off"
          spellcheck="false"
        />
      </div>
      ${My(e,"mould","Mould",CO())} ${My(e,"formula","Base",LO())}
      ${qa("new-run-sell",e.sell,d=>v(e,{sell:d}))}
    </div>
    <div class="choice">
      <button type="button" class="strong" ?disabled=${!r} @click=${l}>Make the run</button>
      <button type="button" @click=${()=>h({new_run:void 0})}>Cancel</button>
    </div>
    ${r?u:s`<p class="hint">A run needs a name, a mould, a base, and how many pieces are to be sold.</p>`}
  </section>`}var CO=()=>[...(a.files?.moulds??[]).filter(e=>!e.shipped).map(e=>[e.file,e.name||e.file]),...a.catalogue.map(e=>[e.path,e.name])],LO=()=>(a.files?.formulas??[]).map(e=>[e.file,e.name||e.file]);function My(e,t,n,o){let i=`new-run-${t}`;return s`<div class="field choose">
    <label for=${i} data-said="required">${n}</label>
    <select id=${i} @change=${l=>v(e,{[t]:l.target.value})}>
      <option value="" .selected=${M(e[t]==="")}>choose ...</option>
      ${o.map(([l,d])=>s`<option value=${l} .selected=${M(l===e[t])}>${d}</option>`)}
    </select>
  </div>`}var IO=(e,t)=>(t.changed??"").localeCompare(e.changed??"");function Cy(){let e=a.files?.runs??[],t=e.filter(o=>!o.shipped).sort(IO),n=e.filter(o=>o.shipped);return s`${kt("Runs")} ${By()}
    <section aria-labelledby="runs-title">
      <h2 id="runs-title">Your runs</h2>
      ${t.length?Ht(t,Fy):s`<p class="aside">No runs of your own in ${a.files?.folder} yet.</p>`}
    </section>
    <section aria-labelledby="examples-title">
      <h2 id="examples-title">Examples</h2>
      ${Ht(n,Fy)}
    </section>
    ${xt("run")}`}function Fy(e){let{pieces:t,mould:n,due:o,made_on:i,changed:r}=e,l=[t===void 0?"":V(t,"piece"),n??"",o?`due ${oe(o)}`:"",i?`made ${oe(i)}`:r?`changed ${oe(r)}`:""].filter(Boolean);return ln({kind:bo,one:e,facts:l,picture:WO(n),open:()=>Xt(e.file)})}var WO=e=>a.files?.moulds.find(t=>t.name===e)?.file??a.catalogue.find(t=>t.name===e)?.path;function Ly(){let e=Un();return s`${kt("Tips")}
    <section aria-labelledby="own-tips">
      <h2 id="own-tips">Your own tips</h2>
      ${Oa(Fn,"Each file is named by the studio, or by the runs that use its tips.",t=>ar(Fn,t))}
      ${e?Jg(e):u}
      ${Ma({label:"A new tip of your own",add:e?`Add it to ${e.file}`:"Begin a file with it",act:t=>e?Promise.resolve(Qg(t)):Js(Fn,Id(t)),tried:de})}
    </section>
    <section aria-labelledby="built-in-tips">
      <h2 id="built-in-tips">Built-in tips</h2>
      <table class="figures">
        <thead>
          <tr>
            <th scope="col">Tip</th>
            <th scope="col">Opening</th>
            <th scope="col">Area, mm²</th>
          </tr>
        </thead>
        <tbody>
          ${_r().map(({name:t,opening:n,area_mm2:o})=>s`<tr>
                <th scope="row">${t}</th>
                <td>${n??""}</td>
                <td>${o===void 0?"":R(o,1)}</td>
              </tr>`)}
        </tbody>
      </table>
    </section>
    ${xt("tips")}`}var Ey=document.getElementById("page");function Ny(){let{view:e,fault:t}=a;return s` <button type="button" class="skip" @click=${()=>document.getElementById("main")?.focus()}>
      Skip to the figures
    </button>
    ${tb()} ${lg()}
    <main
      id="main"
      tabindex="-1"
      data-view=${e}
      class=${a.is_old&&!ft(e)&&e!=="order"?"old-now":""}
    >
      ${t?s`${e==="reading"?s`<h1>Brimwright</h1>`:u}
              <p class="alarm" role="alert">${t}</p>`:u}
      ${NO()}
    </main>
    <p class="unseen" role="status">${a.announcement}</p>`}var EO={runs:Cy,orders:V$,formulas:f$,moulds:h$,fats:i_,tips:Ly};function NO(){let{view:e,fault:t}=a;return mn(e)?Oy(e):ft(e)?EO[e]():e==="formula"?c$():e==="order"?K$():t?u:s`<h1>Brimwright</h1>
    <p>Reading the runs of this folder ...</p>`}jm(()=>{e$(),ht(Ny(),Ey),qO()});ht(Ny(),Ey);document.addEventListener("keydown",e=>{if(!(e.ctrlKey||e.metaKey)||e.key.toLowerCase()!=="z"||ft(a.view)&&!a.mould)return;e.preventDefault();let{undo:t,redo:n}=xl();(e.shiftKey?n:t)?.()});document.addEventListener("visibilitychange",()=>{if(document.visibilityState==="visible")return Ih();Pt()});function jO(){if(!a.run.file)return Kp();h({fault:void 0}),Pt(),ce()}function Kp(){h({fault:void 0}),l$().catch(e=>{h({fault:HO(e)}),e instanceof y&&e.may_pass&&window.setTimeout(Kp,2e3)})}function HO(e){return e instanceof y&&[401,403].includes(e.status)?"This address is from an earlier start. Open the address that brimwright printed this time: it may be pasted here.":e instanceof Error?e.message:String(e)}var Iy=new ResizeObserver(([{target:e}])=>jy(e.offsetHeight)),Wy=null;function qO(){let e=document.querySelector(".foremost");e!==Wy&&(Iy.disconnect(),e?Iy.observe(e):jy(0),Wy=e)}var jy=e=>document.documentElement.style.setProperty("--foremost",`${e}px`);rg();a$();Qp(e=>{Ri(),e&&jO()});Kp();
