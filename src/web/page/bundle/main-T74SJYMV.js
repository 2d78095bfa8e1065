import{A as Uf,B as zf,C as dn,D as Kf,E as Jf,F as Vf,G as re,H as ye,I as Qf,J as Gf,K as ct,L as On,M as yr,N as Rt,O as Gd,P as Yf,Q as Zf,S as Xf,T as eh,U as th,a as Df,b as Pf,c as B,d as w,e as Of,f as Pn,g as Tt,h as ea,i as Ke,j as $i,k as Mf,l as Ff,m as Lf,n as Bf,o as Cf,p as Lo,q as Wf,r as If,s as ta,t as Ef,u as Nf,v as Qd,w as jf,x as Hf,y as ln,z as qf}from"./chunk-OK3W3KGQ.js";var na=globalThis,ia=na.ShadowRoot&&(na.ShadyCSS===void 0||na.ShadyCSS.nativeShadow)&&"adoptedStyleSheets"in Document.prototype&&"replace"in CSSStyleSheet.prototype,oh=Symbol(),nh=new WeakMap,oa=class{constructor(t,n,o){if(this._$cssResult$=!0,o!==oh)throw Error("CSSResult is not constructable. Use `unsafeCSS` or `css` instead.");this.cssText=t,this.t=n}get styleSheet(){let t=this.o,n=this.t;if(ia&&t===void 0){let o=n!==void 0&&n.length===1;o&&(t=nh.get(n)),t===void 0&&((this.o=t=new CSSStyleSheet).replaceSync(this.cssText),o&&nh.set(n,t))}return t}toString(){return this.cssText}},ih=e=>new oa(typeof e=="string"?e:e+"",void 0,oh);var rh=(e,t)=>{if(ia)e.adoptedStyleSheets=t.map(n=>n instanceof CSSStyleSheet?n:n.styleSheet);else for(let n of t){let o=document.createElement("style"),i=na.litNonce;i!==void 0&&o.setAttribute("nonce",i),o.textContent=n.cssText,e.appendChild(o)}},Yd=ia?e=>e:e=>e instanceof CSSStyleSheet?(t=>{let n="";for(let o of t.cssRules)n+=o.cssText;return ih(n)})(e):e;var{is:Vx,defineProperty:Qx,getOwnPropertyDescriptor:Gx,getOwnPropertyNames:Yx,getOwnPropertySymbols:Zx,getPrototypeOf:Xx}=Object,ra=globalThis,sh=ra.trustedTypes,eT=sh?sh.emptyScript:"",tT=ra.reactiveElementPolyfillSupport,vr=(e,t)=>e,Zd={toAttribute(e,t){switch(t){case Boolean:e=e?eT:null;break;case Object:case Array:e=e==null?e:JSON.stringify(e)}return e},fromAttribute(e,t){let n=e;switch(t){case Boolean:n=e!==null;break;case Number:n=e===null?null:Number(e);break;case Object:case Array:try{n=JSON.parse(e)}catch{n=null}}return n}},lh=(e,t)=>!Vx(e,t),ah={attribute:!0,type:String,converter:Zd,reflect:!1,useDefault:!1,hasChanged:lh};Symbol.metadata??=Symbol("metadata"),ra.litPropertyMetadata??=new WeakMap;var Mn=class extends HTMLElement{static addInitializer(t){this._$Ei(),(this.l??=[]).push(t)}static get observedAttributes(){return this.finalize(),this._$Eh&&[...this._$Eh.keys()]}static createProperty(t,n=ah){if(n.state&&(n.attribute=!1),this._$Ei(),this.prototype.hasOwnProperty(t)&&((n=Object.create(n)).wrapped=!0),this.elementProperties.set(t,n),!n.noAccessor){let o=Symbol(),i=this.getPropertyDescriptor(t,o,n);i!==void 0&&Qx(this.prototype,t,i)}}static getPropertyDescriptor(t,n,o){let{get:i,set:r}=Gx(this.prototype,t)??{get(){return this[n]},set(l){this[n]=l}};return{get:i,set(l){let u=i?.call(this);r?.call(this,l),this.requestUpdate(t,u,o)},configurable:!0,enumerable:!0}}static getPropertyOptions(t){return this.elementProperties.get(t)??ah}static _$Ei(){if(this.hasOwnProperty(vr("elementProperties")))return;let t=Xx(this);t.finalize(),t.l!==void 0&&(this.l=[...t.l]),this.elementProperties=new Map(t.elementProperties)}static finalize(){if(this.hasOwnProperty(vr("finalized")))return;if(this.finalized=!0,this._$Ei(),this.hasOwnProperty(vr("properties"))){let n=this.properties,o=[...Yx(n),...Zx(n)];for(let i of o)this.createProperty(i,n[i])}let t=this[Symbol.metadata];if(t!==null){let n=litPropertyMetadata.get(t);if(n!==void 0)for(let[o,i]of n)this.elementProperties.set(o,i)}this._$Eh=new Map;for(let[n,o]of this.elementProperties){let i=this._$Eu(n,o);i!==void 0&&this._$Eh.set(i,n)}this.elementStyles=this.finalizeStyles(this.styles)}static finalizeStyles(t){let n=[];if(Array.isArray(t)){let o=new Set(t.flat(1/0).reverse());for(let i of o)n.unshift(Yd(i))}else t!==void 0&&n.push(Yd(t));return n}static _$Eu(t,n){let o=n.attribute;return o===!1?void 0:typeof o=="string"?o:typeof t=="string"?t.toLowerCase():void 0}constructor(){super(),this._$Ep=void 0,this.isUpdatePending=!1,this.hasUpdated=!1,this._$Em=null,this._$Ev()}_$Ev(){this._$ES=new Promise(t=>this.enableUpdating=t),this._$AL=new Map,this._$E_(),this.requestUpdate(),this.constructor.l?.forEach(t=>t(this))}addController(t){(this._$EO??=new Set).add(t),this.renderRoot!==void 0&&this.isConnected&&t.hostConnected?.()}removeController(t){this._$EO?.delete(t)}_$E_(){let t=new Map,n=this.constructor.elementProperties;for(let o of n.keys())this.hasOwnProperty(o)&&(t.set(o,this[o]),delete this[o]);t.size>0&&(this._$Ep=t)}createRenderRoot(){let t=this.shadowRoot??this.attachShadow(this.constructor.shadowRootOptions);return rh(t,this.constructor.elementStyles),t}connectedCallback(){this.renderRoot??=this.createRenderRoot(),this.enableUpdating(!0),this._$EO?.forEach(t=>t.hostConnected?.())}enableUpdating(t){}disconnectedCallback(){this._$EO?.forEach(t=>t.hostDisconnected?.())}attributeChangedCallback(t,n,o){this._$AK(t,o)}_$ET(t,n){let o=this.constructor.elementProperties.get(t),i=this.constructor._$Eu(t,o);if(i!==void 0&&o.reflect===!0){let r=(o.converter?.toAttribute!==void 0?o.converter:Zd).toAttribute(n,o.type);this._$Em=t,r==null?this.removeAttribute(i):this.setAttribute(i,r),this._$Em=null}}_$AK(t,n){let o=this.constructor,i=o._$Eh.get(t);if(i!==void 0&&this._$Em!==i){let r=o.getPropertyOptions(i),l=typeof r.converter=="function"?{fromAttribute:r.converter}:r.converter?.fromAttribute!==void 0?r.converter:Zd;this._$Em=i;let u=l.fromAttribute(n,r.type);this[i]=u??this._$Ej?.get(i)??u,this._$Em=null}}requestUpdate(t,n,o,i=!1,r){if(t!==void 0){let l=this.constructor;if(i===!1&&(r=this[t]),o??=l.getPropertyOptions(t),!((o.hasChanged??lh)(r,n)||o.useDefault&&o.reflect&&r===this._$Ej?.get(t)&&!this.hasAttribute(l._$Eu(t,o))))return;this.C(t,n,o)}this.isUpdatePending===!1&&(this._$ES=this._$EP())}C(t,n,{useDefault:o,reflect:i,wrapped:r},l){o&&!(this._$Ej??=new Map).has(t)&&(this._$Ej.set(t,l??n??this[t]),r!==!0||l!==void 0)||(this._$AL.has(t)||(this.hasUpdated||o||(n=void 0),this._$AL.set(t,n)),i===!0&&this._$Em!==t&&(this._$Eq??=new Set).add(t))}async _$EP(){this.isUpdatePending=!0;try{await this._$ES}catch(n){Promise.reject(n)}let t=this.scheduleUpdate();return t!=null&&await t,!this.isUpdatePending}scheduleUpdate(){return this.performUpdate()}performUpdate(){if(!this.isUpdatePending)return;if(!this.hasUpdated){if(this.renderRoot??=this.createRenderRoot(),this._$Ep){for(let[i,r]of this._$Ep)this[i]=r;this._$Ep=void 0}let o=this.constructor.elementProperties;if(o.size>0)for(let[i,r]of o){let{wrapped:l}=r,u=this[i];l!==!0||this._$AL.has(i)||u===void 0||this.C(i,void 0,r,u)}}let t=!1,n=this._$AL;try{t=this.shouldUpdate(n),t?(this.willUpdate(n),this._$EO?.forEach(o=>o.hostUpdate?.()),this.update(n)):this._$EM()}catch(o){throw t=!1,this._$EM(),o}t&&this._$AE(n)}willUpdate(t){}_$AE(t){this._$EO?.forEach(n=>n.hostUpdated?.()),this.hasUpdated||(this.hasUpdated=!0,this.firstUpdated(t)),this.updated(t)}_$EM(){this._$AL=new Map,this.isUpdatePending=!1}get updateComplete(){return this.getUpdateComplete()}getUpdateComplete(){return this._$ES}shouldUpdate(t){return!0}update(t){this._$Eq&&=this._$Eq.forEach(n=>this._$ET(n,this[n])),this._$EM()}updated(t){}firstUpdated(t){}};Mn.elementStyles=[],Mn.shadowRootOptions={mode:"open"},Mn[vr("elementProperties")]=new Map,Mn[vr("finalized")]=new Map,tT?.({ReactiveElement:Mn}),(ra.reactiveElementVersions??=[]).push("2.1.2");var eu=globalThis,dh=e=>e,sa=eu.trustedTypes,uh=sa?sa.createPolicy("lit-html",{createHTML:e=>e}):void 0,tu="$lit$",Fn=`lit$${Math.random().toFixed(9).slice(2)}$`,nu="?"+Fn,nT=`<${nu}>`,Wo=document,xr=()=>Wo.createComment(""),Tr=e=>e===null||typeof e!="object"&&typeof e!="function",ou=Array.isArray,gh=e=>ou(e)||typeof e?.[Symbol.iterator]=="function",Xd=`[ 	
\f\r]`,kr=/<(?:(!--|\/[^a-zA-Z])|(\/?[a-zA-Z][^>\s]*)|(\/?$))/g,ch=/-->/g,ph=/>/g,Bo=RegExp(`>|${Xd}(?:([^\\s"'>=/]+)(${Xd}*=${Xd}*(?:[^ 	
\f\r"'\`<>=]|("|')|))|$)`,"g"),mh=/'/g,fh=/"/g,_h=/^(?:script|style|textarea|title)$/i,iu=e=>(t,...n)=>({_$litType$:e,strings:t,values:n}),s=iu(1),R=iu(2),YC=iu(3),Je=Symbol.for("lit-noChange"),d=Symbol.for("lit-nothing"),hh=new WeakMap,Co=Wo.createTreeWalker(Wo,129);function $h(e,t){if(!ou(e)||!e.hasOwnProperty("raw"))throw Error("invalid template strings array");return uh!==void 0?uh.createHTML(t):t}var bh=(e,t)=>{let n=e.length-1,o=[],i,r=t===2?"<svg>":t===3?"<math>":"",l=kr;for(let u=0;u<n;u++){let c=e[u],p,m,_=-1,b=0;for(;b<c.length&&(l.lastIndex=b,m=l.exec(c),m!==null);)b=l.lastIndex,l===kr?m[1]==="!--"?l=ch:m[1]!==void 0?l=ph:m[2]!==void 0?(_h.test(m[2])&&(i=RegExp("</"+m[2],"g")),l=Bo):m[3]!==void 0&&(l=Bo):l===Bo?m[0]===">"?(l=i??kr,_=-1):m[1]===void 0?_=-2:(_=l.lastIndex-m[2].length,p=m[1],l=m[3]===void 0?Bo:m[3]==='"'?fh:mh):l===fh||l===mh?l=Bo:l===ch||l===ph?l=kr:(l=Bo,i=void 0);let y=l===Bo&&e[u+1].startsWith("/>")?" ":"";r+=l===kr?c+nT:_>=0?(o.push(p),c.slice(0,_)+tu+c.slice(_)+Fn+y):c+Fn+(_===-2?u:y)}return[$h(e,r+(e[n]||"<?>")+(t===2?"</svg>":t===3?"</math>":"")),o]},Rr=class e{constructor({strings:t,_$litType$:n},o){let i;this.parts=[];let r=0,l=0,u=t.length-1,c=this.parts,[p,m]=bh(t,n);if(this.el=e.createElement(p,o),Co.currentNode=this.el.content,n===2||n===3){let _=this.el.content.firstChild;_.replaceWith(..._.childNodes)}for(;(i=Co.nextNode())!==null&&c.length<u;){if(i.nodeType===1){if(i.hasAttributes())for(let _ of i.getAttributeNames())if(_.endsWith(tu)){let b=m[l++],y=i.getAttribute(_).split(Fn),T=/([.?@])?(.*)/.exec(b);c.push({type:1,index:r,name:T[2],strings:y,ctor:T[1]==="."?la:T[1]==="?"?da:T[1]==="@"?ua:Eo}),i.removeAttribute(_)}else _.startsWith(Fn)&&(c.push({type:6,index:r}),i.removeAttribute(_));if(_h.test(i.tagName)){let _=i.textContent.split(Fn),b=_.length-1;if(b>0){i.textContent=sa?sa.emptyScript:"";for(let y=0;y<b;y++)i.append(_[y],xr()),Co.nextNode(),c.push({type:2,index:++r});i.append(_[b],xr())}}}else if(i.nodeType===8)if(i.data===nu)c.push({type:2,index:r});else{let _=-1;for(;(_=i.data.indexOf(Fn,_+1))!==-1;)c.push({type:7,index:r}),_+=Fn.length-1}r++}}static createElement(t,n){let o=Wo.createElement("template");return o.innerHTML=t,o}};function Io(e,t,n=e,o){if(t===Je)return t;let i=o!==void 0?n._$Co?.[o]:n._$Cl,r=Tr(t)?void 0:t._$litDirective$;return i?.constructor!==r&&(i?._$AO?.(!1),r===void 0?i=void 0:(i=new r(e),i._$AT(e,n,o)),o!==void 0?(n._$Co??=[])[o]=i:n._$Cl=i),i!==void 0&&(t=Io(e,i._$AS(e,t.values),i,o)),t}var aa=class{constructor(t,n){this._$AV=[],this._$AN=void 0,this._$AD=t,this._$AM=n}get parentNode(){return this._$AM.parentNode}get _$AU(){return this._$AM._$AU}u(t){let{el:{content:n},parts:o}=this._$AD,i=(t?.creationScope??Wo).importNode(n,!0);Co.currentNode=i;let r=Co.nextNode(),l=0,u=0,c=o[0];for(;c!==void 0;){if(l===c.index){let p;c.type===2?p=new bi(r,r.nextSibling,this,t):c.type===1?p=new c.ctor(r,c.name,c.strings,this,t):c.type===6&&(p=new ca(r,this,t)),this._$AV.push(p),c=o[++u]}l!==c?.index&&(r=Co.nextNode(),l++)}return Co.currentNode=Wo,i}p(t){let n=0;for(let o of this._$AV)o!==void 0&&(o.strings!==void 0?(o._$AI(t,o,n),n+=o.strings.length-2):o._$AI(t[n])),n++}},bi=class e{get _$AU(){return this._$AM?._$AU??this._$Cv}constructor(t,n,o,i){this.type=2,this._$AH=d,this._$AN=void 0,this._$AA=t,this._$AB=n,this._$AM=o,this.options=i,this._$Cv=i?.isConnected??!0}get parentNode(){let t=this._$AA.parentNode,n=this._$AM;return n!==void 0&&t?.nodeType===11&&(t=n.parentNode),t}get startNode(){return this._$AA}get endNode(){return this._$AB}_$AI(t,n=this){t=Io(this,t,n),Tr(t)?t===d||t==null||t===""?(this._$AH!==d&&this._$AR(),this._$AH=d):t!==this._$AH&&t!==Je&&this._(t):t._$litType$!==void 0?this.$(t):t.nodeType!==void 0?this.T(t):gh(t)?this.k(t):this._(t)}O(t){return this._$AA.parentNode.insertBefore(t,this._$AB)}T(t){this._$AH!==t&&(this._$AR(),this._$AH=this.O(t))}_(t){this._$AH!==d&&Tr(this._$AH)?this._$AA.nextSibling.data=t:this.T(Wo.createTextNode(t)),this._$AH=t}$(t){let{values:n,_$litType$:o}=t,i=typeof o=="number"?this._$AC(t):(o.el===void 0&&(o.el=Rr.createElement($h(o.h,o.h[0]),this.options)),o);if(this._$AH?._$AD===i)this._$AH.p(n);else{let r=new aa(i,this),l=r.u(this.options);r.p(n),this.T(l),this._$AH=r}}_$AC(t){let n=hh.get(t.strings);return n===void 0&&hh.set(t.strings,n=new Rr(t)),n}k(t){ou(this._$AH)||(this._$AH=[],this._$AR());let n=this._$AH,o,i=0;for(let r of t)i===n.length?n.push(o=new e(this.O(xr()),this.O(xr()),this,this.options)):o=n[i],o._$AI(r),i++;i<n.length&&(this._$AR(o&&o._$AB.nextSibling,i),n.length=i)}_$AR(t=this._$AA.nextSibling,n){for(this._$AP?.(!1,!0,n);t!==this._$AB;){let o=dh(t).nextSibling;dh(t).remove(),t=o}}setConnected(t){this._$AM===void 0&&(this._$Cv=t,this._$AP?.(t))}},Eo=class{get tagName(){return this.element.tagName}get _$AU(){return this._$AM._$AU}constructor(t,n,o,i,r){this.type=1,this._$AH=d,this._$AN=void 0,this.element=t,this.name=n,this._$AM=i,this.options=r,o.length>2||o[0]!==""||o[1]!==""?(this._$AH=Array(o.length-1).fill(new String),this.strings=o):this._$AH=d}_$AI(t,n=this,o,i){let r=this.strings,l=!1;if(r===void 0)t=Io(this,t,n,0),l=!Tr(t)||t!==this._$AH&&t!==Je,l&&(this._$AH=t);else{let u=t,c,p;for(t=r[0],c=0;c<r.length-1;c++)p=Io(this,u[o+c],n,c),p===Je&&(p=this._$AH[c]),l||=!Tr(p)||p!==this._$AH[c],p===d?t=d:t!==d&&(t+=(p??"")+r[c+1]),this._$AH[c]=p}l&&!i&&this.j(t)}j(t){t===d?this.element.removeAttribute(this.name):this.element.setAttribute(this.name,t??"")}},la=class extends Eo{constructor(){super(...arguments),this.type=3}j(t){this.element[this.name]=t===d?void 0:t}},da=class extends Eo{constructor(){super(...arguments),this.type=4}j(t){this.element.toggleAttribute(this.name,!!t&&t!==d)}},ua=class extends Eo{constructor(t,n,o,i,r){super(t,n,o,i,r),this.type=5}_$AI(t,n=this){if((t=Io(this,t,n,0)??d)===Je)return;let o=this._$AH,i=t===d&&o!==d||t.capture!==o.capture||t.once!==o.once||t.passive!==o.passive,r=t!==d&&(o===d||i);i&&this.element.removeEventListener(this.name,this,o),r&&this.element.addEventListener(this.name,this,t),this._$AH=t}handleEvent(t){typeof this._$AH=="function"?this._$AH.call(this.options?.host??this.element,t):this._$AH.handleEvent(t)}},ca=class{constructor(t,n,o){this.element=t,this.type=6,this._$AN=void 0,this._$AM=n,this.options=o}get _$AU(){return this._$AM._$AU}_$AI(t){Io(this,t)}},wh={M:tu,P:Fn,A:nu,C:1,L:bh,R:aa,D:gh,V:Io,I:bi,H:Eo,N:da,U:ua,B:la,F:ca},oT=eu.litHtmlPolyfillSupport;oT?.(Rr,bi),(eu.litHtmlVersions??=[]).push("3.3.3");var St=(e,t,n)=>{let o=n?.renderBefore??t,i=o._$litPart$;if(i===void 0){let r=n?.renderBefore??null;o._$litPart$=i=new bi(t.insertBefore(xr(),r),r,void 0,n??{})}return i._$AI(e),i};var ru=globalThis,wi=class extends Mn{constructor(){super(...arguments),this.renderOptions={host:this},this._$Do=void 0}createRenderRoot(){let t=super.createRenderRoot();return this.renderOptions.renderBefore??=t.firstChild,t}update(t){let n=this.render();this.hasUpdated||(this.renderOptions.isConnected=this.isConnected),super.update(t),this._$Do=St(n,this.renderRoot,this.renderOptions)}connectedCallback(){super.connectedCallback(),this._$Do?.setConnected(!0)}disconnectedCallback(){super.disconnectedCallback(),this._$Do?.setConnected(!1)}render(){return Je}};wi._$litElement$=!0,wi.finalized=!0,ru.litElementHydrateSupport?.({LitElement:wi});var iT=ru.litElementPolyfillSupport;iT?.({LitElement:wi});(ru.litElementVersions??=[]).push("4.2.2");var vh=()=>{},su=!1,pa=!1,lu=!1;function kh(e){vh=e}function Q(){su||(su=!0,queueMicrotask(()=>{su=!1,pa?lu=!0:xh()}))}function xh(){lu=!1,vh()}var rT=1500,au=0;function yh(){clearTimeout(au),pa=!1,lu&&xh()}function Th(){let e=({target:t})=>{!(t instanceof Element)||t.closest("[role=slider], select, canvas")||(pa=!0,clearTimeout(au),au=window.setTimeout(yh,rT))};addEventListener("pointerdown",e,!0);for(let t of["pointerup","pointercancel"])addEventListener(t,()=>setTimeout(yh),!0);addEventListener("click",()=>pa=!1,!0)}function Rh(e){return e.split("/").slice(1).map(t=>t.replaceAll("~1","/").replaceAll("~0","~"))}var j=e=>e.replaceAll("~","~0").replaceAll("/","~1");function $(e,t){let n=e;for(let o of Rh(t)){if(n===null||typeof n!="object")return;n=n[o]}return n}function F(e,t,n){return du(e,Rh(t),n)}function du(e,t,n){let[o,...i]=t;if(o===void 0)return n;if(Array.isArray(e)){let u=[...e],c=du(u[Number(o)],i,n);return c===void 0?u.splice(Number(o),1):u[Number(o)]=c,u}let r={...e??{}},l=du(r[o],i,n);return l===void 0?delete r[o]:r[o]=l,r}var Sh=e=>Pn("GET",`/api/bench?run=${encodeURIComponent(e)}`),Ah=e=>Tt("/api/bench/tick",e),Dh=e=>Tt("/api/bench/weigh_cup",e),Ph=(e,t)=>Tt("/api/bench/anew",{run:e,batch:t}),Oh=(e,t)=>Tt("/api/bench/finish",{run:e,batch:t});var de=(e,t)=>({name:e,label:t,unit:"mm"}),Gn=de("height","Floor to brim"),ma={name:"draft",label:"Draft angle of the wall",unit:"\xB0",optional:!0},uu={block:{words:"Box, loaf or slab",measures:[de("length","Longer side at the brim"),de("width","Shorter side"),Gn,ma,{...de("corner_radius","Corner radius"),optional:!0}]},frustum:{words:"Round cup",measures:[de("floor_diameter","Across the floor"),de("brim_diameter","Across the brim"),Gn]},fluted_cup:{words:"Fluted cup",measures:[de("floor_diameter","Across the floor"),de("brim_diameter","Across the brim"),Gn,{name:"flutes",label:"Flutes",unit:"",count:!0},de("flute_depth","Depth of a flute")]},polygon:{words:"Regular polygon",measures:[{name:"sides",label:"Sides",unit:"",count:!0},de("across_flats","Across the flats"),Gn,ma]},dome:{words:"Bowl",measures:[de("diameter","Across the brim"),Gn]},half_ball:{words:"Half ball",measures:[de("diameter","Across the brim")]},ball:{words:"Ball",measures:[de("diameter","Across")]},half_ring:{words:"Half ring",measures:[de("centre_diameter","Ring, middle to middle of the tube"),de("tube_diameter","Across the tube")]},turned_ring:{words:"Ring with a post",measures:[de("outer_floor_diameter","Cup, across the floor"),de("outer_brim_diameter","Cup, across the brim"),de("post_floor_diameter","Post, at its foot"),de("post_brim_diameter","Post, at its top"),Gn]},turned_profile:{words:"Round, by its wall from the side",measures:[],points:{columns:[de("height","Height"),de("radius","Middle to wall")],least:2,words:"From the lowest point up to the brim: how high, and from the middle line out to the wall, half the width there. A round floor begins with 0 from the middle; a flat one with half its width."}},outline:{words:"Any outline, straight up",measures:[Gn,ma],points:{columns:[de("x","From the left"),de("y","From below")],least:3,words:"The corners of the brim, one after the other as one walks round it. Draw a rectangle round the brim and measure from its left side and from its lower side."}},heart:{words:"Heart",measures:[de("side","Straight edge, tip to round"),Gn,ma]}},Mh=Object.fromEntries(Object.entries(uu).map(([e,{words:t}])=>[e,t])),yi=e=>uu[e]?.measures??[],Yn=e=>uu[e]?.points;var cu=(e,t)=>String($(e,t)??"").trim(),Sr=e=>cu(e,"/shape/kind"),jt=(e,t)=>$(e,`/${t}`)!==void 0,pu=e=>["body","skin"].includes(cu(e,"/mesh/role"));function pt(e,t){let n=$(e,t);return Array.isArray(n)?n:[]}function Fh(e,t){return(Yn(Sr(e))?.columns??[]).map(({name:o})=>String($(t,`/${o}`)??"").trim())}function Ar(e){return pt(e,"/shape/points").flatMap((t,n)=>Fh(e,t).every(Boolean)?[n]:[])}function fa(e){let t=n=>n.some(Boolean)&&!n.every(Boolean);return pt(e,"/shape/points").flatMap((n,o)=>t(Fh(e,n))?[o]:[])}var mu=e=>pt(e,"/water/weighings").flatMap((t,n)=>String(t).trim()?[n]:[]);function Lh(e){let t=e,n=(o,i)=>{if(!Array.isArray($(t,o)))return;let r=i.map(l=>$(e,`${o}/${l}`));t=F(t,o,r)};return Yn(Sr(e))&&n("/shape/points",Ar(e)),n("/water/weighings",mu(e)),t}function ha(e,t){let[,n,o,i]=/^(\/shape\/points|\/water\/weighings)\/(\d+)(.*)$/.exec(t)??[];if(!n)return t;let r=n==="/shape/points"?Ar(e):mu(e);return`${n}/${r[Number(o)]??o}${i}`}function Dr(e){let t=[],n=i=>cu(e,i)!=="",o=(i,r)=>{i||t.push(r)};if(jt(e,"shape")){let i=Sr(e);o(i!=="","the shape");for(let{name:l,label:u,optional:c}of yi(i))o(c||n(`/shape/${l}`),u.toLowerCase());let r=Yn(i);r&&o(Ar(e).length>=r.least,`${r.least} points at least`)}if(jt(e,"water")){o(n("/water/temperature"),"the water's temperature"),o($(e,"/water/filled_to")!==void 0,"how far the water was filled");for(let i of["depth","below_brim"])o($(e,`/water/filled_to/${i}`)===void 0||n(`/water/filled_to/${i}`),"the water's line");o(n("/water/weighed_in"),"what was weighed"),o(mu(e).length>0,"a weighing of water")}return!pu(e)&&!jt(e,"mesh")&&o(n("/cavities"),"how many cavities one mould has"),t}var Le=e=>e.slice(0,e.lastIndexOf("/")+1),mt=e=>e.slice(e.lastIndexOf("/")+1),At=(e,t)=>{let n=Le(e);return n?sT(n+t):t};function sT(e){let t=[];for(let n of e.split("/"))n===".."?t.pop():n!=="."&&t.push(n);return t.join("/")}function Ht(e,t){return(e.toLowerCase().replaceAll(/[^a-z0-9]+/g,"_").replace(/^_+|_+$/g,"").slice(0,60)||"mine")+t}function vi(e,t){let[,n,o]=/^(.*?)((?:\.(?:run|order|formula|fats|tips))?\.\w+)$/.exec(e)??["",e,""];for(let i=1;;++i){let r=i===1?e:`${n}_${i}${o}`;if(!t.some(l=>l.file===r))return r}}var aT=["mould","formula","run","file","own_fats","own_tips"];function fu(e,t=""){return e===null||typeof e!="object"?[]:Object.entries(e).flatMap(([n,o])=>{let i=`${t}/${n}`;return typeof o!="string"?fu(o,i):aT.includes(n)?[i]:[]})}function hu(e,t){let[n,o]=[e,t];for(let i of["/$schema","/id",...fu(e)])[n,o]=[F(n,i,void 0),F(o,i,void 0)];return JSON.stringify(n)===JSON.stringify(o)}function gu(e,t){let n=["/id",...fu(e)].filter(o=>$(e,o)!==$(t,o));return o=>n.reduce((i,r)=>$(i,r)===$(e,r)?F(i,r,$(t,r)):i,o)}var No={name:"run",list:"runs",called:"name",has_id:!0,new_name:({shipped:e,file:t,now:n})=>e?mt(t):Ht(String(n.name),".run.json"),written:e=>e,is_begun:()=>!0},jo={name:"order",list:"orders",called:"for",has_id:!0,new_name:({now:e})=>Ht(String(e.for??"order"),".order.json"),written:e=>e,is_begun:()=>!0},Ho={name:"formula",list:"formulas",called:"name",has_id:!1,new_name:({shipped:e,file:t,now:n})=>e?mt(t):Ht(String(n.name),".formula.json"),written:e=>e,is_begun:()=>!0},_u=(e,t,n)=>({name:e,list:t,called:n,has_id:!1,new_name:({file:o})=>mt(o),written:o=>o,is_begun:()=>!0}),Pr=_u("studio","studios","name"),un=_u("fats","fats"),Zn=_u("tips","tips","title"),it={name:"mould",list:"moulds",called:"name",has_id:!1,new_name:({now:e})=>Ht(String(e.name),".json"),written:e=>({...Lh(e),name:String(e.name??"").trim()}),is_begun:e=>jt(e,"shape")||jt(e,"mesh")};var Bh={},Ch={kind:No,id:"",file:"",version:null,shipped:!1,now:Bh,saved:Bh,unanswered:[]},Se={view:"reading",came_from:"set-up",removed:[],formula_of:"pour",fats:[],catalogue:[],own_tips:{},own_fats:{},own_moulds:{},run:Ch,formulas:{},beside:{},past:[],future:[],quote_wish:{figure:""},is_old:!1,changed_beside:[],dangers:{run:[],apart:[]},list_complaint:"",list_told:"",bench:{run:"",batches:[],complaints:[],acts:[]},record:{run:"",batches:[],acts:[]},stock:{forms:[]},learned:{},ways:{},new_formula:{name:"",copied:""},new_order:"",printing:{paper:localStorage.getItem("paper")==="Letter"?"Letter":"A4",batch:0,is_working:!1,told:""},touched:new Set,has_asked:!1,open:new Set(uT()),folded:new Set,units:lT(),announcement:""},a=Se;function lT(){let e=localStorage.getItem("units");return e==="metric"||e==="us"?e:"both"}var $u=e=>`numbers ${String(e.now.id??e.file)}`,dT=e=>({numbers:localStorage.getItem($u(e))??void 0,figure:""});function Or(e){f({quote_wish:{...Se.quote_wish,...e}});let{numbers:t}=Se.quote_wish;t?.trim()?localStorage.setItem($u(Se.run),t):localStorage.removeItem($u(Se.run))}var Wh="set-up ";function uT(){try{let e=JSON.parse(localStorage.getItem("parts")??"[]");return Array.isArray(e)?e.filter(t=>typeof t=="string"):[]}catch{return[]}}function cT(){let e=[...Se.open].filter(t=>t.startsWith(Wh));localStorage.setItem("parts",JSON.stringify(e))}function f(e){Object.assign(Se,e),Q()}var D=e=>f({announcement:e});function v(e,t){Object.assign(e,t),Q()}function Ln(e,t){let{[e]:n,...o}=Se.formulas;f({formulas:t?{...o,[e]:t}:o})}function He(e,t){let n=new Set(Se[e]);n.delete(t)||n.add(t),f({[e]:n}),t.startsWith(Wh)&&cT()}function ki(e=Ch){f({run:e,formulas:{},beside:{},touched:new Set,has_asked:!1,past:[],future:[],dangers:{run:[],apart:[]},changed_beside:[],taken_in:void 0,fault:void 0,plan:void 0,quote_wish:dT(e),quoted:void 0,run_days:void 0,complaint:void 0,finding:void 0,typed:void 0,measured:void 0})}function ue(e){Se.open.has(e)||f({open:new Set(Se.open).add(e)})}function qo({list:e,called:t},n,o={}){if(!Se.files)return;let i=Se.files[e].findIndex(u=>u.file===n),r={...i<0?{}:Se.files[e][i],file:n,name:String((t&&o[t])??""),note:String(o.note??""),shipped:!1},l=Se.files[e].filter(u=>u.file!==n);l.splice(i<0?l.length:i,0,r),f({files:{...Se.files,[e]:l}})}function Ih({list:e},t,n){if(!Se.files)return;let o=Se.files[e].map(l=>l.file===t?{...l,file:n}:l),i=Se.list_open,r=i?.file===t?Object.assign(i,{file:n}):i;f({files:{...Se.files,[e]:o},list_open:r})}var pT=1e4,bu=sessionStorage.getItem("tab")??crypto.randomUUID();sessionStorage.setItem("tab",bu);var ga=[],xi=()=>`bench ${a.files?.folder??""}`;function ft(){try{return[...JSON.parse(localStorage.getItem(xi())??"[]"),...ga]}catch{return ga}}function wu(e){try{e.length?localStorage.setItem(xi(),JSON.stringify(e)):localStorage.removeItem(xi()),ga=[]}catch{ga=e}}var mT=(e,t)=>e.run===t.run&&e.batch===t.batch&&e.key===t.key;function Eh(e){let t={...e,id:crypto.randomUUID(),tab:bu,at:Date.now()};wu([...ft().filter(n=>!mT(n,t)),t])}var _a=e=>wu(ft().filter(t=>!e(t))),Nh=(e,t)=>wu(ft().map(n=>n.run===e?{...n,run:t}:n)),yu=()=>ft().find(e=>e.tab===bu||Date.now()-e.at>pT);var ge=["pour","pipe","apart"],Ae=["studio","own_fats","own_tips"],$a=e=>Ae.includes(e);var vu=e=>[...new Set(e.flatMap(t=>a.formulas[t]??[]))],ku=()=>Ae.flatMap(e=>a.beside[e]??[]),jh=e=>e.filter(t=>t.theirs),Bn=e=>jh([...vu(e==="apart"?["apart"]:["pour","pipe"]),...ku()])[0],ba=()=>[a.run,...vu(ge),...ku()].filter(e=>e.is_taken&&!e.theirs),wa=()=>jh([a.run,...vu(ge),...ku()]);var Mr=()=>a.formulas.apart?"apart":"run",Hh=e=>f({dangers:{...a.dangers,[Mr()]:e}});function xu(e){let t=e.cautions.filter(n=>n.severity==="danger");Hh(t.map(({text:n,topic:o,batter:i,batch_pieces:r})=>({text:n,is_of_heat:o==="heat",batter:i,batch_pieces:r})))}function qh(e){e.lye_heavy&&Hh([{text:B(e),is_of_heat:!1}])}var Uh={};function qt(e,t){(Uh[e]??=[]).push(t)}function ve(e,t){for(let n of Uh[e]??[])n(t)}var Fr=new Map,Ut=e=>{Fr.set(e,void 0)},Xn=(e,t)=>{Fr.set(e,t)};function zh(e,t){if(!Fr.has(e))return!1;let n=Fr.get(e);return n===void 0&&Fr.set(e,t),n===void 0||n===t}async function Dt({kind:e,name:t,text:n,from:o,goes_on:i,about_to:r,is_own:l}){for(;;){let{runs:u=[],orders:c=[],formulas:p=[],moulds:m=[],studios:_=[],fats:b=[],tips:y=[]}=a.files??{},T=vi(t,[...u,...c,...p,...m,..._,...b,...y]);r?.(T);let V=await fT({file:T,version:null,text:n,from:o,goes_on:i});if(qo(e,T,ye(V.there.text)??{}),V.is_new||l?.(V.there))return V.there}}async function fT(e){try{Ut(e.file);let t=await $i(e);return Xn(t.file,t.version),{is_new:!0,there:t}}catch(t){if(!(t instanceof w)||t.status!==409)throw t;return Xn(e.file,null),{is_new:!1,there:t.answer}}}var ya=e=>`unsaved ${e.name} ${a.files?.folder??""} `;function Uo({kind:e,id:t,file:n,version:o,shipped:i,now:r},l){if(e.is_begun(r))try{let u={id:t,file:n,version:o,shipped:i,text:re(r),copy:l};localStorage.setItem(ya(e)+t,JSON.stringify(u))}catch{}}function Tu(e,t){try{return JSON.parse(localStorage.getItem(ya(e)+t)??"null")??void 0}catch{return}}var eo=(e,t)=>localStorage.removeItem(ya(e)+t),Kh=()=>Object.keys(localStorage).some(e=>e.startsWith("unsaved "));function va(e){let t=ya(e);return Object.keys(localStorage).flatMap(o=>o.startsWith(t)?[o.slice(t.length)]:[]).sort().flatMap(o=>Tu(e,o)??[])}var hT=300,G=e=>e.now!==e.saved;function zo(e,t,n=crypto.randomUUID()){return{kind:e,id:n,file:"",version:null,shipped:!1,now:t,saved:void 0,unanswered:[]}}async function Ie(e,t,n=t){let o=await eh(t),i=gT(e,JSON.parse(o.text),o.shipped),r=Tu(e,n),l=r?.copy&&o.shipped?await _T(e,r,i):void 0;if(l)return eo(e,n),Ie(e,l);let{version:u,shipped:c=!1}=o,p={kind:e,id:n,file:t,version:u,shipped:c,now:i,saved:i,unanswered:[]};return r&&$T(p,r,o),p}var gT=(e,t,n=!1)=>e.has_id&&!n&&t.id===void 0?{...t,id:crypto.randomUUID()}:t;async function _T(e,t,n){if(!a.files?.[e.list].some(r=>r.file===t.copy))return;let o=ye(t.text),i=ye((await Ke(t.copy)).text);if(!(!o||!i||re(o)===re(n)))return hu(e.written(o),i)?t.copy:void 0}function $T(e,t,n){let o=ye(t.text);if(!o||re(o)===re(e.now))return eo(e.kind,e.id);v(e,{now:o}),!(t.version===n.version||n.shipped)&&(v(e,{version:t.version}),tg(e,n))}function Ee(e,t){let n=e.now;v(e,{now:t,failed:void 0,...e.is_taken?{set_aside:void 0,is_taken:void 0}:{}}),Uo(e),ve("edited",{file:e,before:n})}var Jh=new WeakMap,Ru=async e=>Jh.get(e),cn=e=>Vh(e,()=>bT(e)),to=e=>Vh(e,()=>e.shipped?Qh(e,Gh):Promise.resolve());function Vh(e,t){let n=Ru(e).then(t);return Jh.set(e,n.catch(()=>{})),n}async function bT(e){!G(e)||e.theirs||await Qh(e,e.shipped||!e.file?Gh:Yh)}async function Qh(e,t){v(e,{failed:void 0});try{await t(e)}catch(n){throw n instanceof w&&v(e,{failed:B(n.complaint)}),n}}async function Gh(e){let{kind:t,id:n,now:o}=e,i=e.shipped?e.file:void 0,r=t.written(o),l=await Dt({kind:t,name:t.new_name(e),text:re(r),from:i,goes_on:i!==void 0&&t.name==="run",about_to:m=>Uo(e,m),is_own:({text:m})=>i!==void 0&&hu(r,ye(m)??{})}),u=JSON.parse(l.text),c=gu(r,u),p=e.now===o?u:c(e.now);eo(t,n),v(e,{id:l.file,file:l.file,version:l.version,shipped:!1,now:p,saved:u}),G(e)&&Uo(e),i!==void 0&&ve("copied",{file:e,from:i,renamed:c})}async function Yh(e){let{version:t,now:n}=e,o=re(e.kind.written(n));v(e,{unanswered:[...new Set(e.unanswered).add(o)]});try{Ut(e.file);let i=await $i({file:e.file,version:t,text:o});Xn(e.file,i.version),Lr(e,n,i.version)}catch(i){if(!(i instanceof w)||i.status!==409)throw i;Xn(e.file,t),Zh(e,i.answer),G(e)&&!e.theirs&&await Yh(e)}}function Lr(e,t,n){v(e,{saved:t,version:n,theirs:void 0,failed:void 0,unanswered:[]}),G(e)?Uo(e):eo(e.kind,e.id),qo(e.kind,e.file,t)}function Zh(e,{version:t,text:n}){if(n===re(e.kind.written(e.now)))return Lr(e,e.now,t);let o=n!==null&&e.unanswered.includes(n);if(v(e,{unanswered:[]}),o)return v(e,{version:t,saved:void 0,theirs:void 0});let i=G(e)||e.theirs?void 0:ye(n);i?wT(e,i,t):tg(e,{version:t,text:n})}function wT(e,t,n){ve("giving_way",{file:e}),v(e,{set_aside:e.now,is_taken:!0,now:t}),Lr(e,t,n),D(`${e.file} was changed outside this page, and stands here as it is now.`),ve("gave_way",{file:e})}function Xh(e,{version:t,text:n}){let o=ye(n);!o||e.theirs||G(e)||(ve("giving_way",{file:e}),v(e,{now:o}),Lr(e,o,t),ve("gave_way",{file:e}))}var eg=e=>v(e,{set_aside:void 0,is_taken:void 0});function tg(e,{version:t,text:n}){v(e,{theirs:{version:t,text:n}}),Uo(e),D(n===null?`${e.file} was deleted outside this page. Save it again, or leave it deleted?`:`${e.file} was changed outside this page. Which version do you want to keep?`),ve("conflict",{file:e})}function ng(e){if(!e.theirs)return;let t=ye(e.theirs.text);if(!t){let n=`what is in ${e.file} now is no ${e.kind.name}; keep what is on this page`;return v(e,{failed:n})}ve("giving_way",{file:e}),v(e,{set_aside:e.now,now:t}),Lr(e,t,e.theirs.version),ve("gave_way",{file:e})}function og(e){e.theirs&&(v(e,{version:e.theirs.version,saved:void 0,theirs:void 0,failed:void 0}),Uo(e),ve("unwritten",{file:e}))}var Ko=({theirs:e})=>e?.text===null;function ig(e){Ko(e)&&(eo(e.kind,e.id),v(e,{saved:e.now,theirs:void 0,failed:void 0}),D(`${e.file} stays deleted.`),ve("left_deleted",{file:e}))}function rg(e){if(!e.set_aside)return;let{set_aside:t,now:n}=e,o=e.is_taken;f({typed:void 0}),Ee(e,t),v(e,{set_aside:o?void 0:n})}var sg=e=>(e.theirs??e).version;function ag(e,t){v(e,{id:t,file:t}),ve("renamed",{file:e,renamed:n=>n})}async function lg(e){let{version:t,text:n}=await Ke(e.file),o=ye(n);if(!o||e.theirs||t===e.version)return;let i=gu(e.now,o);if(G(e))return v(e,{version:t,now:i(e.now),saved:o});v(e,{version:t,now:o,saved:o}),ve("renamed",{file:e,renamed:i})}var dg=e=>e.shipped||!e.file?[]:[[e.file,sg(e)]];async function Su(e,t,n,o){let i=e.file,r=()=>sg(e)===t&&e.file===i;if(!r()||(await Ru(e),!r()))return!1;o(),await Au();let l=await yT(i,n);return await Ru(e),r()&&(Zh(e,l),G(e)&&!e.theirs&&ve("unwritten",{file:e})),!0}async function yT(e,t){let n=await t(e);return n===null?{version:n,text:null}:Ke(e)}var Au=()=>new Promise(e=>setTimeout(e,hT));var vT=400,kT=2e3,Pu=new WeakMap;function cg(e,t){clearTimeout(Pu.get(e)),Pu.set(e,window.setTimeout(()=>{pn(e)},t))}var no=(e=a.run)=>cg(e,vT),xT=e=>e===a.run||e===a.order?.open;async function pn(e=a.run){clearTimeout(Pu.get(e));try{await cn(e),G(e)&&!e.theirs&&xT(e)&&no(e)}catch(t){if(!(t instanceof w))throw t;t.may_pass&&cg(e,kT)}}async function ht(){for(let e of[a.run,a.order?.open])e?.file&&G(e)&&await pn(e)}var ug=Promise.resolve(),Du=0;function rt(){if(!Du&&!TT().length)return;++Du;let e=ug.then(RT).finally(()=>--Du);return ug=e.catch(()=>{}),e}var TT=()=>[...ge.map(e=>a.formulas[e]),...Ae.map(e=>a.beside[e])].filter(e=>e!==void 0&&G(e)&&!e.theirs);async function RT(){for(let e of ge){let t=a.formulas[e];!t||!G(t)||t.theirs||(t.shipped&&e!=="apart"&&await to(a.run),await cn(t))}for(let e of Ae){let t=a.beside[e];t&&G(t)&&!t.theirs&&await cn(t)}}var zt=e=>At(a.run.file,e);function st(e,t){let n=zt(e);return t?.some(o=>o.file===n)?n:e}function pg(e){let t=a.run.now,n=t.pour,o=t.losses,i=n?.moulds_owned===void 0?{}:{moulds_owned:n.moulds_owned},r=st(String(n?.mould??""),a.files?.moulds);return{file:vi("trial.run.json",a.files?.runs??[]),run:{schema:"brimwright.run/2",name:String(t.name??""),sell:t.sell??"",...t.spoilage===void 0?{}:{spoilage:t.spoilage},pour:{mould:r,...i,formula:e,line:n?.line??{}},losses:{pour:o?.pour??{}},scales:t.scales??{},...ST(t)}}}function ST(e){let t={};for(let n of["cut","pots","batch"])e[n]!==void 0&&(t[n]=e[n]);if(t.batch){let{whippings:n,...o}=t.batch;t.batch=o}return t}function Ne(e){return e.length<2?e.join(""):`${e.slice(0,-1).join(", ")} and ${e.at(-1)}`}var ka=e=>e.charAt(0).toUpperCase()+e.slice(1);var gt=({lines:e})=>Array.isArray(e)?e:[];function mn(e){let t=gt(e);return t.length>0&&t.every(({run:n,pieces:o})=>n&&typeof o=="number")}function Ti(e){let t=gt(e).flatMap(({together:n})=>n??[]);return[...new Set(t.filter((n,o)=>t.indexOf(n)!==o))]}var Pt=new Map,Br=new Set,AT={changed:{},unreadable:[]},fn=()=>new Set([...ge.flatMap(e=>a.formulas[e]??[]),...Ae.flatMap(e=>a.beside[e]??[])]);function Ri(){let e=PT(),t=new Set([...fn()].map(({file:o})=>o));for(let o of Pt.keys())!e.has(o)&&!t.has(o)&&Pt.delete(o);for(let o of Br)e.has(o)||Br.delete(o);let n=[...e].filter(o=>!Pt.has(o));return n.length?DT(n):void 0}async function DT(e){for(let[t,n]of await mg(e))Pt.has(t)||Pt.set(t,n)}async function mg(e){let t=e.filter(o=>!Br.has(o)),n=t.length?await Lo(new Map(t.map(o=>[o,null]))):AT;return Lu(n.unreadable),new Map(e.map(o=>[o,n.changed[o]??null]))}var Mu=async e=>(await mg([e])).get(e)??null,Fu=()=>new Map([...Pt].filter(([e])=>!Br.has(e)));function PT(){let e=new Set,t=o=>{typeof o!="string"||!o||(e.add(zt(o)),o.includes("..")||e.add(o))},n=a.run.now;e.add(zt("studio.json")),t($(n,"/pour/mould")),t($(n,"/pipe/beads/own_tips"));for(let o of Array.isArray(n.decorations)?n.decorations:[])t($(o,"/mould"));for(let o of["pour","pipe"])a.formulas[o]||t($(n,`/${o}/formula`));for(let{file:o,now:i}of fn()){let r=i.own_fats;typeof r=="string"&&r&&e.add(Le(o)+r).add(r)}t($(a.beside.studio?.now,"/own_tips"));for(let o of OT())e.add(o);for(let o of Ae)e.delete(a.beside[o]?.file??"");return e}function OT(){let{open:e}=a.order??{},t=new Set(e?gt(e.now).map(({run:p})=>At(e.file,p)):[]),{runs:n=[],formulas:o=[],moulds:i=[],fats:r=[],tips:l=[]}=a.files??{},u=[...n,...o,...i,...r,...l].filter(({shipped:p})=>!p),c=-1;for(;c!==t.size;){c=t.size;for(let{file:p,used_by:m=[]}of u)m.some(_=>t.has(_))&&t.add(p)}return e&&t.size&&t.add(At(e.file,"studio.json")),t.delete(a.run.file),t}function fg(e,{changed:t}){let n=Object.keys(t).filter(o=>Pt.has(o)&&Pt.get(o)===e.get(o));for(let o of n)Pt.set(o,t[o]);return n}var Lu=e=>e.forEach(t=>Br.add(t));function hg(){return[...fn()].flatMap(({file:e,version:t})=>{let n=Pt.get(e)??t;return Pt.delete(e),n===t?[]:[e]})}var gg=0,Jo=()=>gg;function Bu(e){++gg;for(let{file:t}of fn())e.includes(t)&&Ou.add(t);f({is_old:!0,changed_beside:_g(a.changed_beside,e)})}var Ou=new Set,_g=(e,t)=>[...new Set([...e,...t])];function $g(){if(!a.changed_beside.length)return;let e=a.changed_beside.filter(t=>!Ou.has(t)&&!zh(t,Pt.get(t)??null));Ou.clear(),f({changed_beside:[]}),e.length&&(f({taken_in:{files:_g(a.taken_in?.files??[],e),since:Date.now()}}),D(Cu()))}function Cu(){let{files:e=[]}=a.taken_in??{};if(!e.length)return"";let[t,n,o]=e.length===1?["was","it","it is"]:["were","them","they are"];return`${Ne(e)} ${t} changed outside this page: the figures are of ${n} as ${o} now.`}var MT=5e3;function bg(){a.taken_in&&Date.now()-a.taken_in.since>MT&&f({taken_in:void 0})}var FT=1e3,LT=450,xa=!1,Vo=!1,Wu=0;function se(){f({is_old:!0}),xa?Vo=!0:Si()}async function Si(){if(xa){Vo=!0;return}xa=!0,wg(!1);try{do Vo=!1,await BT();while(Vo)}finally{xa=!1,wg(!0)}}async function vg(){let{run:e}=a,t={file:e.file,run:e.now},n=await th(t)?.catch(()=>{});!n||e!==a.run||a.plan||Kh()||(f({plan:n,planned:t}),xu(n))}var wg=e=>{document.documentElement.dataset.settled=String(e)};function yg(){let{run:e}=a,{apart:t}=a.formulas,{file:n,now:o}=e;return()=>{let i=e===a.run&&(n===e.file||o===e.now);return t===a.formulas.apart&&(t!==void 0||i)}}async function BT(){let e=yg();try{let t=rt();t&&await t;let n=Ri();n&&await n,e=yg();let{apart:o}=a.formulas;if(Bn(o?"apart":"run"))return f({is_old:!0});let i=Jo(),r=o?pg(o.file):{file:a.run.file,run:a.run.now},l=await ta(r);if(window.clearTimeout(Wu),!e())return void(Vo=!0);f({plan:l,planned:r,complaint:void 0}),xu(l);let u=i===Jo();f({is_old:Vo||!u}),u&&$g()}catch(t){if(!(t instanceof w))throw t;if(!e())return void(Vo=!0);CT(t)}}function CT(e){f({is_old:!0}),window.clearTimeout(Wu);let t=()=>{f({complaint:e.complaint}),qh(e.complaint)};a.complaint||!a.plan?t():Wu=window.setTimeout(t,LT),e.may_pass&&window.setTimeout(se,FT)}var kg=2e3,_t=e=>f({bench:{...a.bench,...e}}),WT=()=>_t({acts:ft()});addEventListener("storage",({key:e})=>{e===xi()&&WT()});function Ta(){let{file:e}=a.run;!e||a.bench.run===e||(f({bench:{run:e,batches:[],complaints:[],acts:ft()}}),Cn().then(Nu))}function xg(e){let{file:t}=a.run;Nh(e,t),a.bench.run===e&&_t({run:t,acts:ft()}),a.bench.run===t&&Cn()}function Tg(){let{run:e,version:t}=a.bench;return t===void 0||e!==a.run.file?void 0:{run:e,version:t}}var Cr=0;async function Cn(){let{run:e}=a.bench,t=Cr;try{let n=await Sh(e);if(e!==a.bench.run)return;if(t!==Cr)return await Cn();Rg(n)}catch(n){if(!(n instanceof w))throw n;if(e!==a.bench.run)return;_t({failed:B(n.complaint)}),Sg(n)&&setTimeout(()=>a.bench.failed!==void 0&&void Cn(),kg)}}var Rg=({batches:e,version:t,complaints:n=[]})=>_t({batches:e,version:t,complaints:n.map(({line:o})=>o),failed:void 0}),Sg=({may_pass:e,status:t})=>e||t>=500||[401,403].includes(t),oo=e=>a.bench.batches.find(t=>t.batch===e),Eu=e=>a.bench.acts.filter(({run:t,batch:n})=>t===a.bench.run&&n===e),io=e=>Eu(e).length>0;function ro(e,t){let n=Eu(e).find(i=>i.key===t),o=oo(e)?.ticks[t]!==void 0;return{is_done:n?.done??o,is_waiting:n!==void 0}}function Qo(e){let t=Eu(e).find(n=>n.reading!==void 0);return(t?t.reading:oo(e)?.weigh_cup)??""}function Ag(e,t,n){let{run:o}=a.bench,r=oo(e)!==void 0||!a.planned?void 0:re(a.planned.run);Eh({run:o,batch:e,seen:t,text:r,...n}),_t({acts:ft(),chosen:e,told:void 0}),Nu()}var Dg=(e,t,n,o)=>Ag(e,t,{key:n,done:o}),Pg=(e,t,n)=>Ag(e,t,{reading:n||null}),Iu=!1;async function Nu(){if(!Iu){Iu=!0;try{await navigator.locks.request(xi(),IT)}finally{Iu=!1}ft().length&&setTimeout(()=>{Nu()},kg)}}async function IT(){for(let e=yu();e;e=yu())if(!await ET(e))return}async function ET(e){let{id:t}=e;try{let n=await NT(e);return++Cr,_a(o=>o.id===t),jT(n,e.run),!0}catch(n){if(!(n instanceof w))throw n;return Sg(n)?(_t({unsent:B(n.complaint)}),!1):(await HT(e,n),!0)}}function NT({run:e,text:t,batch:n,seen:o,key:i,done:r,reading:l}){let u={run:e,text:t,batch:n,seen:o};return i!==void 0?Ah({...u,key:i,done:r??!1}):Dh({...u,reading:l??null})}function jT(e,t){let n=ft();if(t!==a.bench.run)return _t({acts:n,unsent:void 0});let i=[...a.bench.batches.filter(r=>r.batch!==e.batch),e].sort((r,l)=>r.batch-l.batch);_t({acts:n,batches:i,unsent:void 0})}async function HT(e,{complaint:t}){++Cr,_a(o=>o.run===e.run&&o.batch===e.batch);let n=`Not taken: ${B(t)}.`;_t({acts:ft(),unsent:void 0,told:{batch:e.batch,words:n}}),D(n),se(),await Cn()}async function Wr(e){let{run:t}=a.bench;await Og(e,async()=>{let n=await Ph(t,e);return _a(o=>o.run===t&&o.batch===e),n})}var ju=e=>Og(e,()=>Oh(a.bench.run,e));async function Og(e,t){let{run:n}=a.bench;try{let o=await t();if(++Cr,n!==a.bench.run)return;Rg(o),_t({acts:ft(),told:void 0,chosen:e})}catch(o){if(!(o instanceof w))throw o;_t({told:{batch:e,words:B(o.complaint)}})}}var Mg=e=>_t({chosen:e,told:void 0}),Fg=()=>_t({told:void 0});var qT=300,UT=1200,Ra="",Lg=0;function Ir(){let e={run:{file:a.run,now:a.run.now}};for(let t of ge){let n=a.formulas[t];n&&(e[t]={file:n,now:n.now})}for(let t of Ae){let n=a.beside[t];n&&(e[t]={file:n,now:n.now})}return e}function Go(e=""){let t=performance.now();e&&e===Ra&&t-Lg<=UT&&a.past.length||Hu(Ir()),f({future:[]}),Ra=e,Lg=t}var Hu=e=>f({past:[...a.past,e].slice(-qT)});function so(e){Hu(Bg(Ir(),e,()=>e.saved??{}))}function Bg(e,t,n){let o=Object.entries(e).map(([i,r])=>r.file===t?[i,{file:t,now:n(r.now)}]:[i,r]);return Object.fromEntries(o)}function qu(e,t){let n=o=>o.map(i=>Bg(i,e,t));f({past:n(a.past),future:n(a.future)})}function Er(){let e=a.past.at(-1);e&&(f({past:a.past.slice(0,-1),future:[...a.future,Ir()]}),Cg(e,"Undone"))}function Uu(){let e=a.future.at(-1);e&&(f({past:[...a.past,Ir()],future:a.future.slice(0,-1)}),Cg(e,"Redone"))}function Cg(e,t){Ra="",f({typed:void 0});for(let n of[...Ae,...ge,"run"])zT(n,e);D(t)}function zT(e,t){let n=t[e];if($a(e))return KT(e,n);let o=e==="run"?n?.file===a.run:a.formulas[e]!==void 0;!n||!o||(e!=="run"&&Ln(e,n.file),n.file.now!==n.now&&Ee(n.file,n.now))}function KT(e,t){t&&t.file===a.beside[e]&&t.file.now!==t.now&&Ee(t.file,t.now)}var Ai=e=>e===a.run||ge.some(t=>a.formulas[t]===e)||Ae.some(t=>a.beside[t]===e);qt("giving_way",({file:e})=>{Ai(e)&&(Ra="",Hu(Ir()),f({typed:void 0}))});for(let e of["copied","renamed"])qt(e,({file:t,renamed:n})=>qu(t,n));var JT=1200,zu="",Wg=0;function Di(e,t=""){let n=performance.now(),o=t&&t===zu&&n-Wg<=JT&&e.past.length;v(e,{past:o?e.past:[...e.past,e.open.now],future:[]}),[zu,Wg]=[t,n]}function Sa(e){let t=e.past.at(-1);t&&(v(e,{past:e.past.slice(0,-1),future:[...e.future,e.open.now]}),Ig(e,t,"Undone"))}function Aa(e){let t=e.future.at(-1);t&&(v(e,{past:[...e.past,e.open.now],future:e.future.slice(0,-1)}),Ig(e,t,"Redone"))}function Ig({open:e},t,n){zu="",f({typed:void 0}),Ee(e,t),D(n)}function ao(e){return e==="run"?a.run:e==="order"?a.order?.open:$a(e)?a.beside[e]:a.formulas[e]}var VT=e=>ao(e)?.now,g=(e,t)=>$(VT(e),t),O=(e,t)=>String(g(e,t)??"");function te(e,t){let n=g(e,t);return Array.isArray(n)?n:[]}function _e(e,t,n){let o=g(e,t)??{};return Object.fromEntries(Object.entries(o).filter(([i])=>!n.includes(i)))}function Eg(e,t){e==="order"&&a.order?Di(a.order,t):Go(t===void 0?"":`${e} ${t}`)}function Z(e,t,n){let o=ao(e);!o||$(o.now,t)===n||(Eg(e,t),Ee(o,F(o.now,t,n)))}function Ng(e,t){let n=ao(e);n&&(Eg(e),f({typed:void 0}),Ee(n,t(n.now)))}function Kt(e){Go(),f({typed:void 0});for(let[t,n]of e){let o=ao(t);o&&Ee(o,n(o.now))}}var Ju=(e,t)=>{let{[e]:n,...o}=a.beside;f({beside:t?{...o,[e]:t}:o})};function Da(e){for(let t of Ae)a.beside[t]===e&&Ju(t,void 0)}async function QT(e,t){try{return await Ie(e,t)}catch(n){if(!(n instanceof w||n instanceof SyntaxError))throw n;return}}async function lo(e,t,n,o=()=>!0){let i=()=>a.beside[e]?.file===n?a.beside[e]:void 0;if(i())return i();let r=await QT(t,n);return i()||!o()?i():(Ju(e,r),r&&G(r)&&(so(r),ve("unwritten",{file:r})),r?.theirs&&ve("conflict",{file:r}),r)}var Ku=()=>zt("studio.json");async function Pi(e=!1){let t=Ku(),n=(a.files?.studios??[]).some(o=>o.file===t);a.beside.studio?.file!==t&&(n||e?await lo("studio",Pr,t,()=>t===Ku()):Ju("studio",void 0))}async function Pa(){a.run.shipped&&await to(a.run);let e=Ku();await lo("studio",Pr,e)||(await GT(e),await lo("studio",Pr,e))}async function GT(e){try{Ut(e);let{version:t}=await $i({file:e,version:null,text:re({schema:"brimwright.studio/1"})});Xn(e,t)}catch(t){if(!(t instanceof w)||t.status!==409)throw t}qo(Pr,e)}var jg=(e,t)=>Le(e.file)+t;async function YT(e){try{return ye((await Ke(e)).text)!==void 0}catch(t){if(!(t instanceof w))throw t;return!1}}async function Oa(e){let t=a.formulas[e];if(!t)return;t.shipped&&await to(t);let n=String($(t.now,"/own_fats")??"");if(n){let l=jg(t,n);return lo("own_fats",un,await YT(l)?l:n)}let o=(a.files?.fats??[]).find(l=>!l.shipped&&Le(l.file)===Le(t.file)),i={schema:"brimwright.fats/1",fats:[]},r=o?.file??await Qu(un,jg(t,"my.fats.json"),i);return Z(e,"/own_fats",mt(r)),lo("own_fats",un,r)}async function Vu(){a.run.shipped&&await to(a.run);let e="/pipe/beads/own_tips",n=String($(a.run.now,e)??"")||String($(a.beside.studio?.now,"/own_tips")??"");if(n)return lo("own_tips",Zn,zt(n));let o=Le(a.run.file),i=(a.files?.tips??[]).find(u=>!u.shipped&&Le(u.file)===o),r={schema:"brimwright.tips/2",tips:[]},l=i?.file??await Qu(Zn,`${o}my.tips.json`,r);return a.beside.studio?Z("studio","/own_tips",mt(l)):Z("run",e,mt(l)),lo("own_tips",Zn,l)}async function Nr(e,t){await lo(e===un?"own_fats":"own_tips",e,t)&&f({held_open:t})}function uo(){let{view:e,held_open:t,beside:n}=a,o=e==="fats"?n.own_fats:e==="tips"?n.own_tips:void 0;return o&&o.file===t?o:void 0}async function Ma(e,t){let n=e===un;await Nr(e,await Qu(e,n?"my.fats.json":"my.tips.json",n?{schema:"brimwright.fats/1",fats:[t]}:{schema:"brimwright.tips/2",tips:[t]}))}async function Qu(e,t,n){let{file:o}=await Dt({kind:e,name:t,text:re(n)});return qo(e,o),o}function Hg(e,t){let n=(i,r)=>String($(i,r)??"").endsWith(mt(t));for(let i of ge)e===a.beside.own_fats&&n(a.formulas[i]?.now,"/own_fats")&&Z(i,"/own_fats",e.file);let o="/pipe/beads/own_tips";e===a.beside.own_tips&&n(a.run.now,o)&&Z("run",o,e.file)}var Yo=[],Oi=[],jr=()=>Yo.at(-1),Yu=()=>Oi.at(-1);function Ba(e){Yo=[...Yo,e],Oi=[],f({list_told:e.words}),D(e.words)}async function zg(){let e=jr();e&&(await e.undo(),Yo=Yo.slice(0,-1),Oi=[...Oi,e],f({list_told:""}),D("Undone"),await Ot())}async function Kg(){let e=Yu();e&&(await e.redo(),Oi=Oi.slice(0,-1),Yo=[...Yo,e],f({list_told:e.words}),D("Redone"),await Ot())}async function Ot(){let[e,t]=await Promise.all([ea(),Bf()]);f({files:e,removed:t})}async function Jg(e,t){let{$schema:n,...o}=JSON.parse((await Ke(t.file)).text),i=`${t.name||Zo(t.file)}, copy`,r={...o,...e.called&&{[e.called]:i},...e.has_id?{id:crypto.randomUUID()}:{}},l=e.called?e.new_name(zo(e,r)):Ht(i,Zu(t.file)),{file:u}=await Dt({kind:e,name:l,text:re(r),from:t.file});await Ot();let c="";return Ba({words:`Copied ${t.name||t.file}.`,undo:async()=>c=await Fa(u,!0),redo:()=>La(u,c)}),u}var Zu=e=>/(\.(run|order|formula|fats|tips))?\.json$/.exec(e)?.[0]??"",Zo=e=>mt(e).slice(0,-Zu(e).length||void 0),Vg=(e,t)=>Le(e)+t+Zu(e),qg=e=>[a.run,a.order?.open,...ge.map(t=>a.formulas[t]),...Ae.map(t=>a.beside[t])].find(t=>t?.file===e);async function Qg(e,t,n){let o={name:t.name,note:t.note,stem:Zo(t.file)};await Gu(e,t.file,n),await Ot();let i=Vg(t.file,n.stem);Ba({words:`Changed ${n.name||i}.`,undo:()=>Gu(e,i,o),redo:()=>Gu(e,t.file,n)})}async function Gu(e,t,{name:n,note:o,stem:i}){let r=qg(t),l=r??await Ie(e,t),u={name:String((e.called&&l.now[e.called])??""),note:String(l.now.note??""),stem:Zo(t)},{note:c,...p}=l.now,m={...p,...o&&{note:o}},_=e.called?F(m,`/${e.called}`,n||void 0):m;if(re(_)!==re(l.now)&&(r&&Ai(r)&&Go(),r===a.order?.open&&a.order&&Di(a.order),Ee(l,_),await cn(l),l.theirs))throw new Error(`${t} was changed outside this page just now. Look at it again.`);let b=Vg(t,i);if(b===t)return Ug(t,u,{name:n,note:o,stem:i});[t,b].forEach(Ut);let{renamed_in:y}=await Mf(t,b);Ih(e,t,b),Ug(b,u,{name:n,note:o,stem:i}),y.forEach(Ut),r&&ag(r,b);for(let T of y){let V=qg(T);V&&await lg(V)}}function Ug(e,t,n){let o=a.list_open;if(o?.file!==e)return;let i=r=>o[r]===t[r]?n[r]:o[r];v(o,{name:i("name"),note:i("note"),stem:i("stem")})}async function Fa(e,t){Ut(e);let{removed:n}=await Ff(e,t);a.run.file===e&&ki(),a.order?.open.file===e&&f({order:void 0});let o=Ae.map(i=>a.beside[i]).find(i=>i?.file===e);return o&&Da(o),n}function La(e,t){return Ut(e),Lf(t)}async function Gg(e,t){let n=await Fa(e.file,t);await Ot(),Ba({words:`Removed ${e.name||e.file}.`,undo:()=>La(e.file,n),redo:async()=>n=await Fa(e.file,!0)})}async function Yg({removed:e,file:t,name:n}){await La(t,e),await Ot();let o="";Ba({words:`${n||t} is back.`,undo:async()=>o=await Fa(t,!0),redo:()=>La(t,o)})}async function Zg({removed:e,file:t,name:n}){f({removed:await Cf(e),list_told:""}),D(`${n||t} is deleted for good.`)}var Xg=0;function De(){let e=++Xg;return()=>e===Xg}function e_(e){let t=$(a.run.now,`/${e}/formula`);return typeof t=="string"&&t?st(t,a.files?.formulas):void 0}async function co(){await Promise.all(["pour","pipe"].map(ZT))}async function ZT(e){let t=e_(e),n=()=>t!==void 0&&a.formulas[e]?.file===t;if(n()||(Ln(e,t_(t)),t===void 0||n()))return;let o=await XT(t);if(!o||e_(e)!==t||n())return;let i=t_(t);Ln(e,i??o),!i&&(G(o)&&(so(o),ve("unwritten",{file:o})),o.theirs&&ve("conflict",{file:o}))}var t_=e=>ge.map(t=>a.formulas[t]).find(t=>t&&t.file===e),Xu=new Map;function XT(e){let t=Xu.get(e)??Ie(Ho,e).catch(eR);return Xu.set(e,t),t.finally(()=>Xu.delete(e))}function eR(e){if(!(e instanceof w||e instanceof SyntaxError))throw e}var Hr=(e,t=0)=>e.map(n=>`M${n.map(([o,i])=>`${o.toFixed(2)} ${(t-i).toFixed(2)}`).join("L")}Z`).join("");function Mi(e){let t=new DataView(e).getUint32(12,!0),n=JSON.parse(new TextDecoder().decode(new Uint8Array(e,20,t))),o=r=>20+t+8+(n.bufferViews[n.accessors[r].bufferView].byteOffset??0),i=r=>n.accessors[r].count;return n.meshes.map(({name:r,primitives:[{attributes:l,indices:u,material:c}]})=>({name:r,positions:new Float32Array(e,o(l.POSITION),i(l.POSITION)*3),indices:new Uint32Array(e,o(u),i(u)),colour:n.materials[c].pbrMetallicRoughness.baseColorFactor}))}function o_(e,t,n="upright"){let[o,i,r]=n==="upright"?[1,2,1]:[2,1,-1],l=[],{positions:u,indices:c}=e;for(let p=0;p<c.length;p+=3){let m=[];for(let _=0;_<3;++_){let b=3*c[p+_],y=3*c[p+(_+1)%3],T=u[b+i]-t,V=u[y+i]-t;if(T>0==V>0)continue;let ze=T/(T-V),Fo=[1e3*(u[b]+ze*(u[y]-u[b])),1e3*r*(u[b+o]+ze*(u[y+o]-u[b+o]))];T>0?m.push(Fo):m.unshift(Fo)}m.length===2&&l.push([m[0],m[1]])}return l}function i_(e){let t=([i,r])=>`${i.toFixed(3)} ${r.toFixed(3)}`,n=new Map;for(let i of e){let r=t(i[0]);n.set(r,[...n.get(r)??[],i])}let o=[];for(let i of e){let r=[],l=n.get(t(i[0]))?.shift();for(;l;)r.push(l[0]),l=n.get(t(l[1]))?.shift();r.length>2&&o.push(r)}return o}function qr(e){let t=e.positions,[n,o,i,r,l,u]=[1/0,-1/0,1/0,-1/0,1/0,-1/0];for(let p=0;p<t.length;p+=3)i=Math.min(i,t[p]),r=Math.max(r,t[p]),l=Math.min(l,t[p+1]),u=Math.max(u,t[p+1]),n=Math.min(n,t[p+2]),o=Math.max(o,t[p+2]);let c=n+(o-n)*.50137;return{loops:i_(o_(e,c)),left:1e3*i,right:1e3*r,floor:1e3*l,brim:1e3*u,cut_y:-1e3*c}}function r_(e,t){let[n,o]=[t.floor/1e3,(t.brim-t.floor)/1e3];return[.999,.50137].map(r=>i_(o_(e,n+r*o,"level"))).reduce((r,l)=>n_(l)>1.001*n_(r)?l:r)}function n_(e){let[t,n]=[1/0,-1/0];for(let o of e)for(let[i]of o)[t,n]=[Math.min(t,i),Math.max(n,i)];return Math.max(0,n-t)}function ec(e,t){let[n,o]=[1/0,-1/0];for(let i of e.loops)i.forEach(([r,l],u)=>{let[c,p]=i[(u+1)%i.length];if(!(Math.min(l,p)>t||Math.max(l,p)<t))for(let m of l===p?[r,c]:[r+(t-l)/(p-l)*(c-r)])n=Math.min(n,m),o=Math.max(o,m)});return n<=o?[n,o]:[e.left,e.right]}var s_=40,tR=2e3,tc=0;async function a_(e){let t=await dn({kind:"glb",gauge:e}),n=Mi(await t.arrayBuffer());return n.find(o=>o.name==="cavity")??n[0]}async function Fi(e){let[t,n]=await Promise.all([ln(e),a_(e)]),o=qr(n);return{gauge:t,outline:o,above:r_(n,o)}}async function nR(e){let{pockets:t}=await ln(e),n=t[0].brim_mm-t[0].floor_mm-.001,o=Array.from({length:s_},(i,r)=>`${(n*(r+1)/s_).toFixed(4)} mm`);return ln({...e,depth:o})}function Jt(){oR()}async function oR(){let e=$(a.run.now,"/pour/mould");if(typeof e!="string")return;let t=++tc,n=st(e,a.files?.moulds);try{let[o,i]=await Promise.all([nR({file:n}),a_({file:n})]);t===tc&&f({measured:{mould:n,gauge:o,outline:qr(i)},measuring_failed:void 0})}catch(o){if(t!==tc)return;if(!(o instanceof w))throw o;f({measured:void 0,measuring_failed:o.message}),o.may_pass&&window.setTimeout(Jt,tR)}}var Ur=({run:e,together:t},n="")=>Pn("GET",`/api/record?run=${encodeURIComponent(e)}&batch=${encodeURIComponent(n)}`+(t===void 0?"":`&together=${encodeURIComponent(t)}`)),nc=e=>Tt("/api/record/begin",e),Ca=e=>Tt("/api/record/note",e);var iR=1e4,ic=2500,rc=sessionStorage.getItem("tab")??crypto.randomUUID();sessionStorage.setItem("tab",rc);var Wa=[],Li=()=>`notes ${a.files?.folder??""}`;function Wn(){try{return[...JSON.parse(localStorage.getItem(Li())??"[]"),...Wa]}catch{return Wa}}function sc(e){try{e.length?localStorage.setItem(Li(),JSON.stringify(e)):localStorage.removeItem(Li()),Wa=[]}catch{Wa=e}}var oc=(e,t)=>e.batch===t.batch&&e.key===t.key,hn=(e,t)=>a.record.acts.filter(n=>oc(n,{batch:e,key:t})).at(-1);function l_(e){let t=Wn(),n=t.filter(i=>oc(i,e)).at(-1),o={...e,seen:n?.seen??e.seen,id:crypto.randomUUID(),tab:rc,at:Date.now()};sc([...t.filter(i=>!oc(i,e)||i.was_sent&&!i.refused),o])}var ac=e=>sc(Wn().map(e)),Ia=(e,t)=>ac(n=>n.id===e?{...n,...t}:n),zr=e=>sc(Wn().filter(t=>!e(t))),rR=({is_typed:e,lacks:t,refused:n,at:o})=>!n&&!t&&(!e||Date.now()-o>=ic),lc=()=>Wn().find(e=>rR(e)&&(e.tab===rc||Date.now()-e.at>iR));var d_=2e3,Pe=e=>f({record:{...a.record,...e}}),Bi=()=>Pe({acts:Wn()});addEventListener("storage",({key:e})=>{e===Li()&&Bi()});function mo(){a.run.file&&Jr({run:a.run.file})}function Jr({run:e,together:t}){Ea({run:e,together:t})||(f({record:{run:e,together:t,batches:[],acts:Wn(),chosen:sR({run:e,together:t})}}),po().then(Kr))}var uc=({run:e,together:t})=>t===void 0?e:`${e}#${t}`,Ea=e=>uc(e)===uc(a.record);function u_(e){a.record.run===e&&(Pe({run:a.run.file}),po())}var c_=e=>`record ${uc(e)}`,sR=e=>sessionStorage.getItem(c_(e))??void 0,p_=()=>a.record.run===a.run.file?a.record.version:void 0,m_=()=>{let{run:e,together:t,version:n}=a.record;return t!==void 0&&n!==void 0&&a.view==="order"?{run:e,record:n}:void 0},cc=0;async function po(){let{run:e,together:t,chosen:n}=a.record,o={run:e,together:t},i=cc;try{let r=await Ur(o,n);if(!Ea(o))return;if(i!==cc||n!==a.record.chosen)return await po();let{batches:l,run_batches:u}=r.record,c=r.poured_by??void 0;Pe({batches:l,of:u??a.record.of,version:r.version,poured_by:c,failed:void 0})}catch(r){if(!(r instanceof w))throw r;if(!Ea(o))return;Pe({failed:B(r.complaint)}),f_(r)&&setTimeout(()=>a.record.failed!==void 0&&void po(),d_)}}var f_=({may_pass:e,status:t})=>e||t>=500||[401,403].includes(t);function Na({record:e},t){if(++cc,!Ea(t))return;let n=new Set(e.batches.map(({begun:u})=>u.id)),o=u=>n.has(u.begun.id),i=u=>e.batches.find(({begun:c})=>c.id===u.begun.id)??u,r=e.batches.filter(({begun:u})=>!a.record.batches.some(c=>c.begun.id===u.id)),l=[...a.record.batches.map(u=>o(u)?i(u):u),...r];Pe({batches:l,of:e.run_batches??a.record.of})}function Ci(){let{batches:e,chosen:t}=a.record;return e.find(({begun:n})=>n.id===t)??e.at(-1)}var ja=(e,t)=>sessionStorage.setItem(c_(e),t);function gn(e){ja(a.record,e),Pe({chosen:e}),po()}var Vt=(e,t)=>a.record.batches.filter(n=>n.number===e&&(!t||new Date(n.begun.begun_at)>=new Date(t))).at(-1),Ha=({pieces:e,written:t})=>`${e} ${e===1?"piece":"pieces"}, ${t}`;function qa({blanks:e,cured:t,rows:n},o){let i=/^cured\.(.+)$/.exec(o)?.[1],r=i&&t?.find(({on:l})=>l===i);return i?r?Ha(r):"":[...e??[],...n??[]].find(l=>l.key===o)?.noted??""}function pc(e,{key:t,text:n,value:o,is_left:i,lacks:r}){let l=qa(e,t),u=hn(e.begun.id,t);if(o===l&&!r&&(!u||!u.was_sent&&u.seen===l))return u&&zr(({id:_})=>_===u.id),Bi();if(u?.value===o&&!u.lacks==!r&&(u.refused??!u.is_typed))return;let{run:p,together:m}=a.record;l_({run:p,together:m,batch:e.begun.id,key:t,text:n,value:o,seen:l,is_typed:!i,lacks:r}),Bi(),i?Kr():setTimeout(()=>{Kr()},ic+50)}var fo=(e,t,n)=>pc(e,{key:t,text:n,value:n,is_left:!0});function h_(e){let{refused:t,value:n}=e;if(!t)return;let{answers:o={confirmed:n}}=t,i=(l=[],u)=>u===void 0?l:[...l,u],r=t.is_asked?{confirmed:i(e.confirmed,o.confirmed),beyond:i(e.beyond,o.beyond)}:{seen:t.noted??e.seen};Ia(e.id,{...r,refused:void 0}),Bi(),Kr()}function g_(e){zr(({id:t})=>t===e.id),Bi()}var dc=!1;async function Kr(){if(!dc){dc=!0;try{await navigator.locks.request(Li(),aR)}finally{dc=!1}Wn().some(e=>!e.refused&&!e.lacks)&&setTimeout(()=>{Kr()},d_)}}async function aR(){for(let e=lc();e;e=lc())if(!await dR(e))return}function lR({batch:e,run:t,together:n}){let{record:o}=a;return o.batches.some(({begun:r})=>r.id===e)?{run:o.run,together:o.together}:{run:t,together:n}}async function dR(e){let{id:t,batch:n,key:o,value:i,seen:r,confirmed:l,beyond:u}=e,c=lR(e);Ia(t,{was_sent:!0});try{let p=await Ca({...c,batch:n,act:t,set:{[o]:i||null},seen:{[o]:r||null},confirmed:l,"beyond-stock":u});return zr(m=>m.id===t),uR(e,p),Na(p,c),Pe({acts:Wn(),unsent:void 0}),!0}catch(p){if(!(p instanceof w))throw p;return f_(p)?(Pe({unsent:B(p.complaint)}),!1):(await cR(e,p),!0)}}function uR({batch:e,key:t},{record:n}){let o=n.batches.find(({begun:i})=>i.id===e);ac(i=>i.batch!==e?i:i.key===t?o?{...i,seen:qa(o,t)}:i:i.refused&&!i.refused.is_asked&&i.refused.noted===void 0?{...i,refused:void 0}:i)}async function cR({id:e,value:t},{complaint:n}){let{asks:o,choices:i,problem:r}=n,l=o==="seen"?i?.[0]?.seen??"":void 0,u=l===!0?"":l,c=o?r:B(n);u===t?zr(p=>p.id===e):Ia(e,{refused:{words:c,is_asked:o==="confirmed"||o==="beyond-stock",noted:u,...pR(i)}}),Bi(),await po()}function pR(e=[]){let t=e[0]?.confirmed,n=e[0]?.["beyond-stock"];return t===void 0&&n===void 0?{}:{answers:{confirmed:t,beyond:n},is_lye:t===mR}}var mR="lye-heavy",Ua=e=>a.record.acts.filter(t=>t.batch===e&&(t.refused??t.lacks)).length;async function za(e,t){if(!e||!t)return;let n=e.blanks?e:await fR(e.begun.id),o=n?.blanks?.filter(mc)??[];n&&o.length===1&&fo(n,o[0].key,t)}async function fR(e){try{return(await Ur(a.record,e)).record.batches.find(({begun:t})=>t.id===e)}catch(t){if(!(t instanceof w))throw t;return}}var mc=({key:e})=>/^topping(-\d+)?\.cup$/.test(e);var __=()=>a.view==="order",fc=()=>__()?a.recorded:void 0;function Ka(){if(!__()||!a.order)return[];let{file:e,now:t}=a.order.open,n=[e,...gt(t).flatMap(({run:o})=>o?At(e,o):[])];return n.filter((o,i)=>n.findIndex(r=>Le(r)===Le(o))===i)}var hc=e=>f({recorded:e});async function Ja(){if(a.recorded!==void 0)return;let{stock:e}=await Lo(new Map,{stock:"",beside:Ka()});e!==void 0&&a.recorded===void 0&&hc(e)}var $_=()=>Pn("GET","/api/stock?names"),b_=e=>Tt("/api/stock/act",e),Va=e=>Pn("GET",`/api/trail?of=${encodeURIComponent(e)}`);var hR=2e3,In=e=>f({stock:{...a.stock,...e}}),w_=()=>a.view==="shelf"||a.view==="trail",gc=()=>w_()?a.stock.version:void 0,gR=({may_pass:e,status:t})=>e||t>=500||[401,403].includes(t);async function ho(){try{let{version:t,stock:n}=await $_();In({version:t,list:n,failed:void 0})}catch(t){if(!(t instanceof w))throw t;In({failed:B(t.complaint)}),gR(t)&&setTimeout(()=>w_()&&a.stock.failed!==void 0&&void ho(),hR)}let{trail:e}=a.stock;a.view==="trail"&&e&&await y_(e.of)}function Be(e,t){let n=a.stock.trail?.of===e;f({view:"trail",stock:{...a.stock,trail:{...n&&a.stock.trail,of:e,order:t}}}),a.stock.version===void 0?ho():y_(e)}async function y_(e){let t=n=>{let o=a.stock.trail;o?.of===e&&In({trail:{of:e,order:o.order,...n}})};try{let{version:n,trail:o}=await Va(e);t({trail:o}),In({version:n})}catch(n){if(!(n instanceof w))throw n;let{problem:o,choices:i=[]}=n.complaint,r=i.flatMap(({what:l})=>l??[]);t(r.length?{complaint:`${o}: which is meant?`,choices:r}:{complaint:B(n.complaint)})}}var v_=()=>`shelf ${a.files?.folder??""}`;function _c(e){sessionStorage.setItem(v_(),JSON.stringify(e)),In({forms:e})}function k_(){try{In({forms:JSON.parse(sessionStorage.getItem(v_())??"[]")})}catch{In({forms:[]})}}var $c=(e,t)=>e.kind===t.kind&&e.of===t.of,En=e=>a.stock.forms.find(t=>$c(t,e));function bc(e){if(En(e))return;let t={on:_R(),...e.typed};_c([...a.stock.forms,{sources:[],confirmed:[],act:crypto.randomUUID(),...e,typed:t}]),In({told:void 0})}var wc=e=>_c(a.stock.forms.filter(t=>!$c(t,e))),Wi=(e,t)=>_c(a.stock.forms.map(n=>$c(n,e)?{...n,...t}:n)),Qt=(e,t)=>Wi(e,{...t,typed:{...e.typed,...t.typed},act:crypto.randomUUID(),confirmed:[],complaint:void 0});function Xo(e,t,n){Wi(e,{complaint:{file:"",field:t,problem:n,remedy:"",line:n}}),D(n)}async function Qa(e,t){let n=En(e);if(!n||n.is_asking)return!1;Wi(e,{is_asking:!0,complaint:void 0});try{let{stock:o}=await b_({...t,act:n.act,confirmed:n.confirmed,seen:n.seen}),i=o.done.length?o.done:["It was recorded already."];return wc(e),In({told:{of:e.of,sentences:i}}),D(i.join(" ")),await ho(),!0}catch(o){if(!(o instanceof w))throw o;return Wi(e,{is_asking:!1,complaint:o.complaint}),D(`Not recorded: ${o.complaint.problem}`),o.complaint.asks==="seen"&&await ho(),!1}}function x_(e,t){Wi(e,{confirmed:[...e.confirmed,t],complaint:void 0})}var T_=(e,t)=>Wi(e,{seen:t,complaint:void 0});function _R(){let e=new Date;return[e.getFullYear(),e.getMonth()+1,e.getDate()].map(t=>String(t).padStart(2,"0")).join("-")}var Vr=()=>f({own_fats:{}});function go(e){let t=Qr(e);return Array.isArray(t)?[...t,...a.fats]:a.fats}function Qr(e){let t=a.formulas[e],n=$(t?.now,"/own_fats");if(typeof n!="string"||!n.endsWith(".json")||t===void 0)return;let o=a.beside.own_fats;if(o&&[Le(t.file)+n,n].includes(o.file))return S_(o.now)??"none";let i=`${t.file}
${n}`,r=a.own_fats[i];return r||(R_(i,"waiting"),$R(n,t.file).then(l=>R_(i,l)),"waiting")}var R_=(e,t)=>f({own_fats:{...a.own_fats,[e]:t}});async function $R(e,t){for(let n of new Set([Le(t)+e,e])){let o=S_(await bR(n));if(o)return o}return"none"}var S_=e=>Array.isArray(e?.fats)?e.fats.map(wR):void 0;async function bR(e){try{return ye((await Ke(e)).text)}catch{return}}var wR=({id:e,name:t,saponification_value:n})=>({id:String(e??""),name:String(t??e??""),own:yR(n)});function yR(e){if(e===null||typeof e!="object")return String(e??"");let{low:t,high:n}=e;return`${String(t)} to ${String(n)}`}var Ii=[],Gr;function Ga(){Ii.length=0;for(let{file:e,shipped:t}of a.files?.moulds??[])t||Ii.push(e);Gr===void 0&&A_()}function yc(e){let t=a.own_moulds[e];return!t&&e!==Gr&&!Ii.includes(e)&&Ii.push(e),Gr===void 0&&Ii.length&&A_(),t}async function A_(){for(;(Gr=Ii.shift())!==void 0;){let e=Gr,t=await kR(e);t&&f({own_moulds:{...a.own_moulds,[e]:t}})}}var vR=2e3;async function kR(e){try{let{pockets:t}=await ln({file:e});return{brimful_ml:t[0].brimful_ml,cavities:t.length}}catch(t){if(!(t instanceof w))throw t;if(t.may_pass){window.setTimeout(()=>yc(e),vR);return}let{field:n,problem:o,remedy:i}=t.complaint;return{complaint:[n&&`${n.slice(1).replaceAll("/",", ")} `,o,i&&`; ${i}`].join("")}}}var O_=()=>f({own_tips:{}}),vc=!1;function Yr(){return!a.tips&&!vc&&(vc=!0,zf().then(e=>f({tips:e}),M_).finally(()=>vc=!1)),a.tips??[]}function kc(e){let t=zt(e),n=a.beside.own_tips;if(n?.file===t)return P_(n.now);let o=a.own_tips[t];return o||!e||a.typed?o??[]:(D_(t,[]),Ke(t).then(({text:i})=>D_(t,P_(ye(i))),M_),[])}var D_=(e,t)=>f({own_tips:{...a.own_tips,[e]:t}});function P_(e){let t=e?.tips;return(Array.isArray(t)?t:[]).map(n=>({name:String(n.name)}))}function M_(e){if(!(e instanceof w))throw e}var Ya=300,xR=5e3,W_=2e3,TR=500,F_=!1,Zr=new AbortController,Za=()=>Zr.abort(),I_=()=>document.visibilityState==="hidden";function Xa(){if(F_)return;F_=!0;let e=async()=>{Zr=new AbortController;let t=await RR(Zr).then(()=>I_()?xR:Ya,()=>Zr.signal.aborted?Ya:W_);await L_(Ya),await L_(t-Ya,Zr.signal),e()};e()}var L_=(e,t)=>new Promise(n=>{if(e<=0||t?.aborted)return n();setTimeout(n,e),t?.addEventListener("abort",()=>n())}),E_=()=>[a.run,...a.order?[a.order.open]:[],...a.mould?[a.mould.open]:[],...fn()],xc=()=>{let e=Tg(),t=m_();return t?{version:e?.version,...t}:e&&{...e,record:p_()}},N_=()=>gc()??fc(),j_=()=>({bench:xc(),stock:N_(),beside:Ka()}),H_=()=>new Map(E_().flatMap(dg)),B_=()=>JSON.stringify([[...H_().keys()],[...Fu().keys()],xc()?.run??null,xc()?.record??null,N_()??null,Ka()]);async function RR(e){let t=hg();t.length&&await C_(t);let[n,o]=[H_(),Fu()],i=new Map([...o,...n]),r=[...o].every(([c,p])=>i.get(c)===p),l=r&&!I_()?await SR(i,e):await Lo(i,j_());l.bench!==void 0&&await Cn(),l.record!==void 0&&await po(),l.stock!==void 0&&await AR(l.stock),Lu(l.unreadable),await DR(n,l);let u=fg(o,r?l:await Lo(o));u.length&&await C_(u)}async function SR(e,t){let[n,o]=[B_(),Date.now()],i=window.setInterval(()=>{(B_()!==n||Date.now()-o>Wf+W_)&&t.abort()},TR);try{return await If(e,j_(),t.signal)}finally{window.clearInterval(i)}}async function AR(e){fc()!==void 0&&hc(e),gc()!==void 0&&await ho()}async function DR(e,{changed:t}){let n=fn();for(let o of E_()){let i=e.get(o.file);i===void 0||!(o.file in t)||(n.has(o)?await PR(o,i):await Su(o,i,Mu,()=>{}))}}async function PR(e,t){let n=!1,o=()=>{n=!0,Bu([e.file])};try{await Su(e,t,Mu,o)&&Vr()}finally{n&&se()}}async function C_(e){Bu(e);try{await Au(),Vr(),O_(),f({measured:void 0}),Jt(),Ga(),await Promise.all([co(),Pi(!0)])}finally{se()}}async function U_(e){let t=await Xf();f({files:t});let n=Zf(t,e.run);try{await el(n,n===e.run||!e.run?e.view:void 0)}catch(o){let i=o instanceof w?o.message:`The run opened last can no longer be read: ${String(o)}`;f({fault:i,view:"runs"}),localStorage.removeItem("run")}}async function Rc(){try{let[e,t]=await Promise.all([qf(),Uf()]);f({fats:e,catalogue:t})}catch(e){if(!(e instanceof w))throw e;e.may_pass?window.setTimeout(()=>{Rc()},OR):f({fault:e.message})}}var OR=2e3,MR=()=>new Promise(e=>setTimeout(e,400)),Tc={};function Nn(e,t){return De(),el(e,t)}async function el(e,t="weigh"){if(!e)return f({view:"runs"});let n=Tc={name:e},o=a.view;a.run.file&&G(a.run)&&await pn();let i=await Ie(No,e);if(Tc!==n||(ki(i),Ta(),await Promise.race([vg(),MR()]),a.run!==i))return;a.view===o&&Tc===n&&f({view:t}),localStorage.setItem("run",i.file),G(i)&&(so(i),no());let r=Si().finally(Jt);await Promise.all([r,co(),Pi()]),Xa()}var q_=()=>(a.files?.studios??[]).some(e=>e.file==="studio.json");async function tl(e){let t=De(),n=a.run.now,o=n.losses??{},i={schema:"brimwright.run/2",id:crypto.randomUUID(),name:e.name,sell:e.sell,pour:{mould:e.mould,formula:e.formula}};e.slice&&(i.cut={bar:{thickness:e.slice},...q_()?{}:{kerf:""}}),q_()||(i.note=`Losses, scales and spoilage were taken over from "${String(n.name)}": check them.`,n.spoilage!==void 0&&(i.spoilage=n.spoilage),i.losses={pour:o.pour??{}},i.scales=n.scales??{},n.money&&!a.run.shipped&&(i.money=n.money));let{file:r}=await Dt({kind:No,name:Ht(e.name,".run.json"),text:re(i)});t()&&(ue("set-up pour"),e.slice&&ue("set-up cut"),await Nn(r,"set-up"))}var FR="examples/plain_bars.run.json";function at(e){Vr();let t=On(a.view)?a.view:a.came_from;f({view:"formula",came_from:t,formula_of:e,picking:void 0,typed:void 0})}async function Xr(e){let t=De(),n=["pour","pipe"].find(i=>a.run.file&&a.formulas[i]?.file===e);if(n)return at(n);a.run.file||await el(FR,"reading");let o=await Ie(Ho,e);t()&&LR(o)}function LR(e){f({run_steps:{past:a.past,future:a.future},past:[],future:[]}),Ln("apart",e),G(e)&&so(e),f({plan:void 0,complaint:void 0}),at("apart"),Si()}async function BR(){let e=a.formulas.apart!==void 0;return await nl()?(f({view:e?"weigh":a.came_from,typed:void 0}),!0):!1}async function nl(){return a.formulas.apart?await CR()?(Si(),!0):!1:!0}async function CR(){try{await rt()}catch(t){if(!(t instanceof w))throw t;return f({complaint:t.complaint}),!1}if(a.formulas.apart?.theirs)return D("Choose first which version of the formula to keep."),window.scrollTo(0,0),!1;Ln("apart",void 0);let e={...a.dangers,apart:[]};return f({dangers:e,...a.run_steps,run_steps:void 0,plan:void 0,complaint:void 0}),!0}async function z_(e){let t=a.view==="formula"&&a.formulas[a.formula_of]===e,n=a.formulas.apart===e;for(let o of["pour","pipe"])a.formulas[o]===e&&Ln(o,void 0);n&&await nl(),t&&f({view:n?"formulas":"set-up",typed:void 0})}async function Sc(e){let{file:t}=a.formulas.apart;await BR()&&Z("run",`/${e}/formula`,t)}var WR=e=>({schema:"brimwright.formula/2",name:e,fats:[],superfat:"",alkali:[],water:{},pour_temperature:""}),K_=e=>V_(WR(e));async function J_(e,t){let{$schema:n,...o}=JSON.parse((await Ke(e)).text);await V_({...o,name:t},e)}async function V_(e,t){let n=De(),o=Ht(String(e.name),".formula.json"),{file:i}=await Dt({kind:Ho,name:o,text:re(e),from:t});n()&&await Xr(i)}var IR=30,ER=2e3,Q_=0,Ac=!1,Dc=!1;function Pc(e,t,n){let o=t==="mesh"?a.mesh:void 0;f({mould:{way:t,title:n,open:e,is_old:!1,shapes:{},past:[],future:[]},mesh:o,typed:void 0}),ol()}var _n=()=>f({mould:void 0,mesh:void 0}),Ei=(e,t,n)=>Pc(zo(it,e),t,n);async function G_(e,t){let n=De(),o=await Ie(it,e,t?crypto.randomUUID():e);if(!n())return!1;let i=String(o.now.name??e);return t&&v(o,{now:{...o.now,name:""}}),Pc(o,"form",t?`A copy of ${i}`:`Change ${i}`),!0}async function Y_({id:e,file:t,text:n}){let o=De(),i=t?await Ie(it,t,e):zo(it,JSON.parse(n),e);return o()?(Pc(i,"form",String(i.now.name??"").trim()||"A mould of your own"),!0):!1}var ie=()=>a.mould,K=()=>ie().open.now;function Ce(e,t){Di(ie(),e),Ee(ie().open,F(K(),e,t))}var Z_=()=>Sa(ie()),X_=()=>Aa(ie()),NR=["name","note","owned","unmould_after"];function Oc(e){let t=K(),n=Object.keys({...e,...t}).filter(l=>e?.[l]!==t[l]);(!e||n.some(l=>!NR.includes(l)))&&v(ie(),{is_old:!0});let i=n.some(l=>ie().complaint?.field===`/${l}`),r=n.some(l=>!["name","note"].includes(l));(ie().is_old||i||r)&&ol()}function ol(){clearTimeout(Q_),Q_=window.setTimeout(()=>{jR()},IR)}async function jR(){if(Ac)return void(Dc=!0);let{mould:e}=a;if(!e)return;let t=e.open.now;if(!(!jt(t,"shape")&&!jt(t,"mesh"))){if(Dr(t).length)return v(e,{complaint:void 0});Ac=!0;try{let n=it.written(t),o={file:e.open.file||"new.mould.json",mould:{...n,name:n.name||"New mould"}},i=await Fi(o);e.open.now===t&&v(e,{answer:i,is_old:!1,complaint:void 0})}catch(n){if(!(n instanceof w))throw n;e.open.now===t&&e===a.mould&&Mc(n),n.may_pass&&window.setTimeout(ol,ER)}finally{Ac=!1,Dc&&ol(),Dc=!1}}}function Mc(e){let{field:t,problem:n,remedy:o,keep:i,entry:r}=e.complaint,l=t?`${n}; ${o}`:e.message;v(ie(),{complaint:{field:ha(K(),t),line:l,keep:i&&{...i,at:ha(K(),i.at)},about:r===void 0?void 0:ha(K(),`${t}/${r}`)}})}var e$={};async function Gt(e){De();let t=e$={name:e},n=a.view;if(a.order?.open.file!==e){a.order&&G(a.order.open)&&await pn(a.order.open);let o=await Ie(jo,e);if(e$!==t)return;let i=G(o)?[o.saved??{}]:[];f({order:{open:o,past:i,future:[],times:""},typed:void 0}),G(o)&&no(o)}a.view===n&&f({view:"order",typed:void 0}),Xa()}function t$(){f({order:void 0,...a.view==="order"?{view:"orders"}:{}})}async function n$(e){let t=De(),n={schema:"brimwright.order/1",id:crypto.randomUUID(),for:e,lines:[]},o=jo.new_name(zo(jo,n)),{file:i}=await Dt({kind:jo,name:o,text:re(n)});t()&&await Gt(i)}var me=()=>a.order,o$=()=>Sa(me()),i$=()=>Aa(me());var il=e=>Object.values(a.formulas).includes(e),Ni=e=>Object.values(a.beside).includes(e),r$=e=>`${String($(e,"/pour/formula"))}
${String($(e,"/pipe/formula"))}`;function HR(e,t){$(e,"/pour/mould")!==$(t,"/pour/mould")&&Jt(),r$(e)!==r$(t)&&co(),se(),no()}var qR=se;function UR(e,t){for(let n of["pour","pipe"]){if(a.formulas[n]!==e)continue;let o=`/${n}/formula`,i=r=>String($(r,o)??"").endsWith(mt(t))?F(r,o,e.file):r;qu(a.run,i),i(a.run.now)!==a.run.now&&Ee(a.run,i(a.run.now))}}async function zR(e){e===a.run?(ki(),localStorage.removeItem("run"),f({view:"runs"})):e===a.mould?.open?_n():e===a.order?.open?t$():Ni(e)?Da(e):await z_(e),await Ot(),a.run.file&&se()}function s$(){qt("edited",({file:e,before:t})=>{bg(),e===a.run?HR(t,e.now):il(e)||Ni(e)?qR():e===a.mould?.open?Oc(t):e===a.order?.open&&no(e)}),qt("gave_way",({file:e})=>{if(f({typed:void 0}),e===a.mould?.open)return Oc();e!==a.order?.open&&(e===a.run&&(Jt(),co().then(se)),se())}),qt("left_deleted",({file:e})=>{zR(e)}),qt("unwritten",({file:e})=>{e===a.run||e===a.order?.open?pn(e):(il(e)||Ni(e))&&se()}),qt("conflict",({file:e})=>{(il(e)||Ni(e))&&f({is_old:!0})}),qt("renamed",({file:e})=>{Ni(e)&&a.held_open!==void 0&&f({held_open:e.file}),e===a.run&&(localStorage.setItem("run",e.file),Jt(),co()),se()}),qt("copied",({file:e,from:t})=>{il(e)&&UR(e,t),Ni(e)&&Hg(e,t),a.held_open===t&&f({held_open:e.file}),e===a.run&&(xg(t),u_(t),localStorage.setItem("run",e.file),Pi().then(se))})}var $t=s`<span aria-hidden="true">⚠</span> Danger`;function es(e,t="",n){let o=_o(e,n);return o.length?s`<div class="dangers" id=${t||d}>
    ${o.map(i=>s`<p class="danger"><strong>${$t}</strong> ${i}</p>`)}
  </div>`:d}function _o(e,t){let n=e==="pour"?"pipe":"pour";return a.dangers[e==="apart"?"apart":"run"].filter(o=>!o.is_of_heat).filter(o=>e==="apart"||o.batter!==n).filter(o=>t===void 0||o.batch_pieces===void 0||o.batch_pieces===t).map(o=>o.text)}function a$(){let e=ct(a.view)||a.view==="order"||a.view==="trail"||Mr()==="apart",t=a.dangers.run.map(({text:n})=>({from:e?`In the run "${String(a.run.now.name??a.run.file)}": `:"",text:n}));return[...a.dangers.apart.map(({text:n})=>({from:"",text:n})),...t]}var l$=()=>a$().length>0;function d$(){let e=a$(),t=VR(),n=t||ct(a.view)?"":Cu();return!e.length&&!t&&!n?d:s`<section class="foremost" aria-label="Danger, and figures from before">
    ${e.length?s`<div role="alert" class="dangers">
            ${e.map(({from:o,text:i})=>s`<p class="danger"><strong>${$t}</strong> ${o}${i}</p>`)}
          </div>`:d}
    ${t?s`<div class="stale">
            <p role="status"><strong>Figures from before.</strong> ${t}</p>
            ${KR()?s`<button type="button" @click=${JR}>To the question</button>`:d}
          </div>`:d}
    ${n?s`<div class="taken-in">
            <p>${n}</p>
            <button type="button" @click=${()=>f({taken_in:void 0})}>Close</button>
          </div>`:d}
  </section>`}var KR=()=>Bn(Mr())!==void 0&&!ct(a.view);function JR(){let e=document.querySelector(".banner h2");e&&(e.tabIndex=-1,e.focus({preventScroll:!0}),e.scrollIntoView({block:"start"}))}function VR(){if(!a.run.file||a.view==="reading")return"";let e=Bn(Mr());if(e&&Ko(e))return`${e.file} was deleted outside this page: what is struck through rests on no file. Save it again, or leave it deleted.`;if(e)return`${e.file} was changed outside this page: what is struck through is of neither version. Choose which to keep.`;let t=a.changed_beside;return a.is_old&&t.length?`${Ne(t)} ${t.length===1?"was":"were"} changed outside this page: what is struck through is not to be weighed.`:""}var jn={ATTRIBUTE:1,CHILD:2,PROPERTY:3,BOOLEAN_ATTRIBUTE:4,EVENT:5,ELEMENT:6},rl=e=>(...t)=>({_$litDirective$:e,values:t}),ji=class{constructor(t){}get _$AU(){return this._$AM._$AU}_$AT(t,n,o){this._$Ct=t,this._$AM=n,this._$Ci=o}_$AS(t,n){return this.update(t,n)}update(t,n){return this.render(...n)}};var{I:QR}=wh,u$=e=>e;var p$=e=>e.strings===void 0,c$=()=>document.createComment(""),Hi=(e,t,n)=>{let o=e._$AA.parentNode,i=t===void 0?e._$AB:t._$AA;if(n===void 0){let r=o.insertBefore(c$(),i),l=o.insertBefore(c$(),i);n=new QR(r,l,e,e.options)}else{let r=n._$AB.nextSibling,l=n._$AM,u=l!==e;if(u){let c;n._$AQ?.(e),n._$AM=e,n._$AP!==void 0&&(c=e._$AU)!==l._$AU&&n._$AP(c)}if(r!==i||u){let c=n._$AA;for(;c!==r;){let p=u$(c).nextSibling;u$(o).insertBefore(c,i),c=p}}}return n},$o=(e,t,n=e)=>(e._$AI(t,n),e),GR={},sl=(e,t=GR)=>e._$AH=t,m$=e=>e._$AH,al=e=>{e._$AR(),e._$AA.remove()};var P=rl(class extends ji{constructor(e){if(super(e),e.type!==jn.PROPERTY&&e.type!==jn.ATTRIBUTE&&e.type!==jn.BOOLEAN_ATTRIBUTE)throw Error("The `live` directive is not allowed on child or event bindings");if(!p$(e))throw Error("`live` bindings can only contain a single expression")}render(e){return e}update(e,[t]){if(t===Je||t===d)return t;let n=e.element,o=e.name;if(e.type===jn.PROPERTY){if(t===n[o])return Je}else if(e.type===jn.BOOLEAN_ATTRIBUTE){if(!!t===n.hasAttribute(o))return Je}else if(e.type===jn.ATTRIBUTE&&n.getAttribute(o)===t+"")return Je;return sl(e),t}});var tt=e=>e.normalize("NFD").replace(/\p{M}/gu,"").toLowerCase();function Hn(e,t){let n=tt(t).split(/\s+/).filter(Boolean),o=i=>n.every(r=>tt(i).includes(r));return o(`${e.name} ${e.id.replaceAll("_"," ")}`)?e.name:"own"in e?void 0:[...e.also_called,e.inci].find(o)}function ll(e,t){let n=tt(e).replaceAll(/[^a-z0-9]+/g,"_").replace(/^[_0-9]+|_+$/g,"")||"my_fat";for(let o=1;;++o){let i=o===1?n:`${n}_${o}`;if(!t.some(r=>r.id===i))return i}}var qi=28.349523125,_$=25.4,YR=29.5735295625;function Ve(e,t){return e.toFixed(t).replace(/^-(0(\.0*)?)$/,"$1")}function S(e,t){return $$(Ve(e,t))}var $$=e=>e.replace(/(\.\d*?)0+$/,"$1").replace(/\.$/,"");function lt(e){let t=[1,2,3].find(n=>Number(e.toFixed(n))!==0);return t!==void 0?`${Ve(e,t)} %`:Fc(e)?"just below 0 %":"0.0 %"}var Fc=e=>e<0||Object.is(e,-0),b$=e=>Math.abs(e-Math.round(e))<1e-6;function f$(e){return e?[0,1,2,3].find(t=>b$(e*10**t))??3:0}function h$(e){return Math.max(0,Math.ceil(-Math.log10(e)-1e-9))}function ZR(e){return[0,1,2].find(t=>e.every(n=>b$(n*10**t)))??3}function ns(e,t,n){return e==="metric"?[t,""]:e==="us"?[n,""]:[t,n]}function ae(e,t){let n=r=>e[`${t}${r}`],o=n("scale_step_g"),i=n("g");return{g:i,scale_step_g:o??10**-ZR([i]),g_text:n("g_text"),oz_text:n("oz_text"),reads:n("reads")}}var w$=.001;function ts(e,t,n,o,i=1e-9){let r=10**n;return Ve(o==="nearest"?e/t:Math.floor((e+i)/t*r)/r,n)}var g$=[1,.5,.2,.1,.05,.02,.01,.005,.002,.001];function XR(e){if(!g$.some(t=>Math.abs(t*10-e)<1e-9||Math.abs(t-e)<1e-9))return g$.find(t=>Math.abs(t*qi-e)<.6*w$)}function X(e,t,n="nearest"){let o=t.scale_step_g||.1,i=XR(o),r=Math.min(.6*w$,o/2),l=i?ts(t.g,1,h$(o),n):ts(t.g,1,f$(o),n,r),u=i?ts(t.g,qi,f$(i),n,r):ts(t.g,qi,h$(o/qi),n),[c,p]=[`${t.g_text??l} g`,`${t.oz_text??u} oz`];return(t.reads?t.reads==="oz":i!==void 0)&&e==="both"?[p,c]:ns(e,c,p)}var H=(e,t,n=1,o="nearest")=>X(e,{g:t,scale_step_g:10**-n},o);function Mt(e,{g:t=0,pieces:n}){if(n!==void 0)return`${n} ${n===1?"piece":"pieces"}`;let o=l=>$$(ts(t,l,3,"down")),i=16*qi,r=t<1e3?`${o(1)} g`:`${o(1e3)} kg`;return x(ns(e,r,t<i?`${o(qi)} oz`:`${o(i)} lb`))}function ke(e,t,n=1){return ns(e,`${Ve(t,n)} ml`,`${Ve(t/YR,2)} US fl oz`)}function $e(e,t){return ns(e,`${S(t,1)} mm`,e0(t))}function e0(e){let t=Math.round(Math.abs(e)/_$*32),n=e<0&&t?"-":"",o=t%32,i=32;for(;o&&o%2===0;)o/=2,i/=2;let r=Math.floor(t/32),l=o?`${o}/${i}`:"";return`${n}${[r||!o?String(r):"",l].filter(Boolean).join(" ")} in`}var Lc=([e])=>e,x=([e,t])=>t?`${e} (${t})`:e;function y$(e,t){return ns(e,`${Ve(t,0)} \xB0C`,`${Ve(t*1.8+32,0)} \xB0F`)}function Yt(e){let t=/^\s*(?:(\d+)\s+)?(\d+(?:[.,]\d+)?)(?:\/(\d+))?\s*(mm|cm|m|in|inch|inches|")\s*$/.exec(String(e??""));if(!t)return;let n=Number(t[1]??0)+Number(t[2].replace(",","."))/Number(t[3]??1),o={mm:1,cm:10,m:1e3}[t[4]]??_$;return n*o}function Ft(e){return/^[+-]?[\d.,/\s½¼¾]+?\s*([^\d\s.,/].*)$/.exec(String(e??""))?.[1]?.trim()??""}var Oe=e=>/^\s*[+-]?\d[\d.,/\s]*$/.test(e);function N(e){let t=new Date(/^\d{4}-\d\d-\d\d$/.test(e)?`${e}T12:00`:e);return Number.isNaN(t.getTime())?e:t.toLocaleDateString("en-GB",{dateStyle:"medium"})}function xe(e){return`${new Date(`${e}T12:00`).toLocaleDateString("en-GB",{weekday:"short"})} ${N(e)}`}var v$=e=>new Date(`${e}T12:00`).toLocaleDateString("en-GB",{day:"numeric",month:"short"}),Te=e=>e.replaceAll(/\d{4}-\d\d-\d\d/g,N);function dl(e){let t=Math.ceil(e),[n,o]=[Math.floor(t/60),t%60];return[n?`${n} h`:"",o||!n?`${o} min`:""].filter(Boolean).join(" ")}function bo(e){let t=Math.round(e/60);return e>=60&&e%60===0&&t<90?`${t} min`:e<90?`${Math.round(e)} s`:t<90?`${t} min`:`${Math.floor(t/60)} h ${t%60} min`}function T$(e){let t=Yt(e.round?.radius);if(t)return k$(t,R`<circle class="plain" r=${t} />`);let n=t0(e);if(!n)return d;let o=Math.max(...n.map(([i,r])=>Math.hypot(i,r)));return o>0?k$(o,R`<path class="plain" d=${`M${n.map(i=>i.join(" ")).join("L")}Z`} />`):d}var k$=(e,t)=>s`<svg class="tip" viewBox="${-1.1*e} ${-1.1*e} ${2.2*e} ${2.2*e}" aria-hidden="true">
    ${t}
  </svg>`;function t0({star:e,outline:t}){if(e&&typeof e=="object"&&!Array.isArray(e))return n0(e);if(!Array.isArray(t))return;let n=t.map(o=>[x$(o,"x"),-x$(o,"y")]);return n.some(([o,i])=>Number.isNaN(o)||Number.isNaN(i))?void 0:n}function x$(e,t){let n=String(e[t]??"").trim();return(n.startsWith("-")?-1:1)*(Yt(n.replace(/^-/,""))??NaN)}function n0({points:e,outer_radius:t,inner_radius:n}){let[o,i]=[Yt(t),Yt(n)];if(!(!o||!i||typeof e!="number"||e<3||e>60))return Array.from({length:2*e},(r,l)=>{let u=Math.PI*l/e,c=l%2?i:o;return[c*Math.sin(u),-c*Math.cos(u)]})}var Bc=!1;function R$(e){let{plan:t,explanation:n}=a,o=n?.of!==t;return o&&!Bc&&i0(),{workings:o0(n?.workings,e),complaint:n?.complaint,is_old:o}}function o0(e,t){let n=e?.get(t);return n?[n]:[...e?.values()??[]].filter(({of:o})=>o.startsWith(`${t}.`))}async function i0(){let{plan:e,planned:t}=a;if(!(!e||!t)){Bc=!0;try{let{how:n}=await Ef(t);f({explanation:{of:e,workings:new Map(n.map(o=>[o.of,o]))}})}catch(n){if(!(n instanceof w))throw n;f({explanation:{of:e,workings:new Map,complaint:n.message}})}finally{Bc=!1}}}var S$=R`<path class="wall" d="M30 10l8 52h44l8-52" />`,Cc={alkali:{name:"alkali",words:"Sodium hydroxide (NaOH) or potassium hydroxide (KOH), dry. Dissolved in water it is lye solution, which is another weight."},batch:{name:"batch",words:"What is mixed at once. A run that is too large for the pot is made in several."},batter:{name:"batter",words:"Fats and lye solution stirred together, until it sets."},cure:{name:"cure",words:"The weeks in which the soap dries and becomes milder. A cured piece weighs less than a fresh one."},embed:{name:"embed",words:"A piece of soap cast beforehand and buried in the base."},headspace:{name:"headspace",words:"The room left between the base and the brim. The topping may fill some of it.",drawing:R`<path class="shaded pour" d="M34 36l4 26h44l4-26z" />${S$}<path class="pour-line" d="M20 36h80" />
      <path class="measure" d="M60 12v22m-4-4l4 4 4-4m-8-14l4-4 4 4" />`},kerf:{name:"kerf",words:"What the blade or wire turns to crumbs at each cut."},lye_solution:{name:"lye solution",words:"Alkali dissolved in water. Its weight is that of both together."},margin:{name:"margin",words:"What is left of the price after cost and fees, as a share of the price without tax."},markup:{name:"markup",words:"What is put on the cost, as a share of the cost. A markup of 100 % is a margin of 50 %."},overrun:{name:"overrun",words:"How much air whipping beats in: at 100 % the topping has twice the volume that it had before.",drawing:R`<path class="shaded pipe" d="M14 44h28v18h-28z" /><path class="shaded pipe" d="M72 26h28v36h-28z" />
      <path class="measure" d="M48 44h16m-5-5l5 5-5 5" /><path class="wall" d="M10 20v42h36v-42M68 20v42h36v-42" />`},purity:{name:"purity",words:"The share of the alkali that is alkali. The rest is mostly water that it drew from the air."},rejects:{name:"rejects",words:"Pieces that come out unfit to sell, as a share of all that are made."},scale_step:{name:"smallest step",words:"The least by which the scale's display can change, such as 1 g or 0.1 g."},superfat:{name:"superfat",words:"The share of the fats that is left without lye to turn it into soap, so that the soap is mild."},superfat_as_weighed:{name:"superfat as weighed",words:"The superfat that comes of the weights on this page, after rounding to what the scales show. Below 0 % there is lye left over, and the soap burns."},trace:{name:"trace",words:"The batter is thick enough that what drips from the whisk stays seen on it for a moment."},weigh_cup:{name:"weigh-cup",words:"A small cup of known volume, filled level with whipped topping and weighed without the cup. It shows how light the topping is today, and so how many pieces the bowl pipes.",drawing:R`<path class="shaded pipe" d="M30 10l8 52h44l8-52z" />${S$}<path class="measure" d="M20 10h80" />`}};var Wc=e=>`term ${e}`;function qn(e){return s`<button
    type="button"
    class="ask-term"
    aria-expanded=${a.open.has(Wc(e))?"true":"false"}
    aria-label="What ${Cc[e].name} means"
    @click=${()=>He("open",Wc(e))}
  >
    <span aria-hidden="true">?</span>
  </button>`}function Zt(e){if(!a.open.has(Wc(e)))return d;let{name:t,words:n,drawing:o}=Cc[e];return s`<span class="term-words" role="note"
    >${o?s`<svg class="drawn" viewBox="0 0 120 72" aria-hidden="true">${o}</svg>`:d}<span
      ><b>${t}</b>: ${n}</span
    ></span
  >`}var wo=e=>s`<span class="term">${qn(e)}${Zt(e)}</span>`;function I({key:e,label:t,shown:n,of:o,working:i,size:r="plain",note:l,term:u}){let c=a.open.has(e),p=`sum-${e.replaceAll(/[^\w]/g,"-")}`;return s`<div class="figure ${u?"explains":""}">
    <button
      type="button"
      class="line"
      aria-expanded=${c?"true":"false"}
      aria-controls=${c?p:d}
      @click=${()=>He("open",e)}
    >
      <span class="name">${t}${l?s`<small>${l}</small>`:d}</span>
      <span class="value ${r==="weigh"?"large":""} ${a.is_old?"old":""}"
        ><b>${n[0]}</b>${n[1]?s` <i>${n[1]}</i>`:d}</span
      ><span class="how" aria-hidden="true">${c?"\u2013":"="}</span>
    </button>
    ${u?s`${qn(u)}${Zt(u)}`:d}
    ${c?s`<div class="sum" id=${p}>${i?ul(i):Ic(o)}</div>`:d}
  </div>`}var ei=(e,t,n)=>I({key:e,label:t,shown:["",""],of:n});function Ic(e){let{workings:t,complaint:n,is_old:o}=R$(e);return t.length?s`<div class=${o?"old":""}>${t.map(ul)}</div>`:o?s`<p class="old" role="status">Asking how it is calculated ...</p>`:s`<p role="status">${n??"The program does not say how this is calculated."}</p>`}function ul({formula:e,with:t,sum:n,rounded:o,comes_to:i,sources:r}){let l=n&&i?`${n} = ${i}`:n??(i&&`It comes to ${i}`);return s`<p class="formula">${e}</p>
    <table>
      <caption>
        With
      </caption>
      <tbody>
        ${t.map(({name:u,value:c,from:p})=>s`<tr>
              <th scope="row">${u}</th>
              <td>${c}</td>
              <td>${p??""}</td>
            </tr>`)}
      </tbody>
    </table>
    ${l?s`<p class="comes-to">${l}${o?`, rounded ${o}`:""}</p>`:d}
    ${r.length?s`<p class="sources">From: ${r.join("; ")}.</p>`:d}`}var ti,os=[],Un=()=>ti!==void 0;function bt(e,t,n,o){if(!ti||ti.some(r=>r.id===n))return;let i=os.flatMap(({part:r})=>r??[]);ti.push({of:e,at:t,id:n,label:o,part:i.at(-1)??"",folds:os.flatMap(({fold:r})=>r??[])})}function Lt(e,t){os.push(e);try{return t()}finally{os.pop()}}var A$=()=>{},D$=e=>{A$=e},cl,r0=()=>[a.run.now,...Object.values(a.formulas).map(e=>e.now),...Object.values(a.beside).map(e=>e.now),a.formulas.apart,a.plan,a.fats,a.files];function Ui(){if(Un())return[];let e=r0();return cl?.of.length===e.length&&e.every((n,o)=>n===cl.of[o])||(cl={of:e,wanted:s0()}),cl.wanted}function s0(){ti=[],os=[];try{return A$(),ti}finally{ti=void 0}}function P$(e){a.touched.has(e)||f({touched:new Set(a.touched).add(e)})}function O$(e,t){if(a.has_asked)return!1;let n=Ui().filter(o=>o.of===e&&(o.at===t||o.at.startsWith(`${t}/`)));return n.length>0&&n.every(o=>!a.touched.has(o.id))}var Y=(e,t)=>`f-${e}${t.replaceAll(/[^\w]/g,"-")}`;function pl(e){if(e==="order")return a.order?.quoted?.complaint??a.order?.days?.complaint;let t=(n,o)=>o===a.plan?n?.complaint:void 0;return a.complaint??t(a.quoted,a.quoted?.of)??t(a.run_days,a.run_days?.of[0])}function Qe(e,t){let n=pl(e);if(!(!n||n.field!==t&&!n.field.startsWith(`${t}/`)))return Bt(e)&&!O$(e,n.field)?B(n):void 0}function Me(e,t){return pl(e)?.field===t?Qe(e,t):void 0}function Bt(e){let t=pl(e),n=ao(e)?.file;return!t||n===void 0?!1:t.file===""||t.file===n||t.file.endsWith(`/${n}`)}function a0(e,t){let n=t.slice(0,t.lastIndexOf("/"));return Object.keys(g(e,n)??{}).length>1?t:n}function $n(){let e=pl();if(e)for(let t of["run",...ge,...Ae])for(let n=e.field;n;n=n.slice(0,n.lastIndexOf("/"))){let o=Qe(t,n)&&document.getElementById(Y(t,n));if(o)return o}}function l0(e,t){let n=e.of??"run";if(e.optional&&t.trim()==="")return;if(e.number)return/^\s*\d+([.,]\d+)?\s*$/.test(t)?Number(t.trim().replace(",",".")):t;if(e.count)return/^\s*\d{1,9}\s*$/.test(t)?Number(t):t;let o=d0(e,n);return o&&Oe(t)?`${t.trim()} ${o}`:t}function d0(e,t){return Ft(g(t,e.at))||e.unit||""}var be=(e,t,n)=>t||n?s`<p id="${e}-said" class=${t?"complaint":"hint"}>${t??n}</p>`:d,Ec=!1;addEventListener("pointerdown",()=>Ec=!0,!0);for(let e of["pointerup","pointercancel"])addEventListener(e,()=>Ec=!1,!0);var u0=()=>f({typed:void 0});function ni(e){let{id:t}=e.target,n=()=>{u0(),P$(t)};Ec?addEventListener("pointerup",()=>setTimeout(n),{once:!0}):n()}var c0=e=>typeof e=="string"&&e.startsWith("?")?e.slice(1).trim():void 0,p0=({unit:e="",told:t=""},n)=>[e.replace("cm2","cm\xB2"),t,n?"required":""].filter(Boolean).join(", ")||d;function h(e){let t=e.of??"run",n=Y(t,e.at),o=g(t,e.at),i=c0(o),r=a.typed?.key===n,l=r?a.typed.text:o===void 0||i!==void 0?"":String(o),u=i!==void 0||l.trim()===""&&(!e.optional||e.is_due===!0);u&&bt(t,e.at,n,e.label);let c=Qe(t,e.at),p=b=>{let y=b.target.value;f({typed:{key:n,text:y}});let T=l0(e,y);Z(t,T===void 0&&e.takes_part?a0(t,e.at):e.at,T)},_=(r&&typeof o=="string"&&o!==l?`taken as ${o}`:"")||e.hint||i;return s`<div
    class="field ${e.wide?"wide":""} ${e.short?"short":""} ${c?"wants":""}"
  >
    ${Nc(s`<label for=${n} data-said=${p0(e,u)}>${e.label}</label>`,e.term)}
    <input
      id=${n}
      type=${e.date?"date":"text"}
      aria-required=${e.optional&&!e.is_due?d:"true"}
      .value=${P(l)}
      @input=${p}
      @blur=${ni}
      autocomplete="off"
      spellcheck="false"
      inputmode=${e.date?d:e.count?"numeric":e.number?"decimal":"text"}
      aria-invalid=${c?"true":"false"}
      aria-describedby=${[c||_?`${n}-said`:"",e.described_by??""].filter(Boolean).join(" ")||d}
    />
    ${be(n,c,_)} ${e.term?Zt(e.term):d}
  </div>`}var Nc=(e,t)=>t?s`<div class="labelled">${e}${qn(t)}</div>`:e;function nt(e){for(let t=e?.closest("details");t;t=t.parentElement?.closest("details"))t.open=!0;e?.focus()}var L=e=>()=>document.getElementById(e),oe=(e,t)=>L(Y(e,t)),Xt=e=>()=>document.querySelector(`#${e} :is(input, select, button[aria-pressed])`),m0=()=>document.activeElement;function C(e){requestAnimationFrame(()=>nt(e()))}function wt(e,t,n,o=m0){D(t),Ng(e,n),C(o)}function q(e,t,n,o,i){wt(e,t,r=>F(r,n,o),i)}var Ct=(e,t,n)=>`${Y(e,t)}-${n}`;function W(e,t){let n=Me(e,t);return n?s`<p id=${Y(e,t)} class="complaint" tabindex="-1">${n}</p>`:d}var M$=(e,t,n)=>t.map(([o,i])=>s`<button type="button" aria-pressed=${o===e?"true":"false"} @click=${()=>n(o)}>
        ${i}
      </button>`);function ce(e,t,n,o){return s`<div class="choice" role="group" aria-label=${e}>${M$(t,n,o)}</div>`}function A({of:e="run",question:t,at:n,asked_at:o=n,is_told_elsewhere:i,chosen:r,answers:l,puts:u,then:c,hint:p,optional:m,term:_}){let b=i?Ct(e,n,t.replaceAll(/\W+/g,"-")):Y(e,o),y=r===void 0&&!m;y&&bt(e,o,b,t);let T=i?void 0:Me(e,o),V=ze=>{if(ze===r)return;let Fo=l.find(([Jx])=>Jx===ze)[1];q(e,`${t}: ${Fo}`,n,u(ze),c&&oe(e,c(ze)))};return s`<div class="field asked ${T?"wants":""}">
    ${Nc(s`<p class="question" id="${b}-label" data-said=${y?"required":d}>${t}</p>`,_)}
    <div
      class="choice"
      role="group"
      id=${b}
      tabindex="-1"
      aria-labelledby="${b}-label"
      aria-describedby=${T||p?`${b}-said`:d}
    >
      ${M$(r,l,V)}
    </div>
    ${be(b,T,p)} ${_?Zt(_):d}
  </div>`}function jc(e,t,n,o){let i=Y("run",e),r=Me("run",e),l=()=>q("run",`${t}: ${n?"no":"yes"}`,e,n?void 0:o);return s`<div class="choice">
      <button
        type="button"
        id=${i}
        aria-pressed=${n?"true":"false"}
        aria-describedby=${r?`${i}-said`:d}
        @click=${l}
      >
        ${t}
      </button>
    </div>
    ${be(i,r)}`}function fe({label:e,of:t="run",at:n,answers:o,unsaid:i,optional:r,chosen:l,take:u}){let c=Y(t,n),p=Qe(t,n),m=l??O(t,n);!m&&!r&&bt(t,n,c,e);let _=!m||o.some(([T])=>T===m),b=[["",i],..._?[]:[[m,m]],...o];return s`<div class="field choose ${p?"wants":""}">
    <label for=${c} data-said=${m||r?d:"required"}>${e}</label>
    <select
      id=${c}
      aria-required=${r?d:"true"}
      @change=${T=>{let V=T.target.value;u?u(V):Z(t,n,V||!r?V:void 0)}}
      aria-invalid=${p?"true":"false"}
      aria-describedby=${p?`${c}-said`:d}
    >
      ${b.filter(([T])=>T||r||!m).map(([T,V])=>s`<option value=${T} .selected=${P(T===m)}>${V}</option>`)}</select
    >${be(c,p)}
  </div>`}function zi(e,t,n=[]){let o=st(O("run",t),n);return fe({label:e,at:t,chosen:o,answers:n.map(i=>[i.file,i.name||i.file]),unsaid:"choose ..."})}function ot({of:e="run",at:t,name:n,title:o,add:i,blank:r,body:l}){let u=Ct(e,t,"part"),c=Ct(e,t,"add"),p=()=>Lt({part:o},l);return g(e,t)===void 0?s`<p class="choice">
      <button type="button" id=${c} @click=${()=>q(e,`${o} added`,t,r,Xt(u))}>
        ${i}
      </button>
    </p>`:s`<div class="part" id=${u} role="group" aria-label=${o}>
    <div class="part-head">
      <p class="part-title">${o}</p>
      <button
        type="button"
        aria-label="Remove ${n}"
        @click=${()=>q(e,`${o} removed`,t,void 0,L(c))}
      >
        Remove
      </button>
    </div>
    ${W(e,t)} ${p()}
  </div>`}var F$=(e,t)=>`folded ${e} ${t}`,Ge=(e,t)=>ue(F$(e,t));function M({of:e="run",name:t,pointers:n,summary:o,is_needed:i,body:r}){let l=F$(e,t);if(Un())return s`${Lt({fold:l},r)}`;(i||n.some(p=>Qe(e,p)))&&ue(l);let u=a.open.has(l);return s`<details .open=${u}>
    <summary @click=${p=>{p.preventDefault(),He("open",l)}}>${o}</summary>
    ${u?s`<div class="folded">${r()}</div>`:d}
  </details>`}var k=({of:e="run",at:t})=>te(e,t),E=({of:e="run",at:t},n)=>Ct(e,`${t}/${n}`,"item"),ml=({of:e="run",at:t},n,o)=>Ct(e,`${t}/${n}`,o),f0=({of:e="run",at:t})=>Y(e,t);function is(e,t,n,o){let{of:i="run",at:r,stays:l,and:u=c=>c}=e;wt(i,t,c=>u(F(c,r,n.length||l?n:void 0),n.length),o)}function U(e,t,n){let o=k(e);is(e,`${n} added`,[...o,t],Xt(E(e,o.length)))}function h0(e,t,n){let o=k(e).filter((l,u)=>u!==t),i=Math.min(t,o.length-1),r=o.length>(e.least??0);is(e,`${n} removed`,o,r?L(ml(e,i,"drop")):oe(e.of??"run",e.at))}function g0(e,t,n,o){let i=[...k(e)],[r]=i.splice(t,1);i.splice(t+n,0,r);let l=n<0?"earlier":"later",c=t+n===0||t+n===i.length-1?n<0?"later":"earlier":l;is(e,`${o} moved ${l}`,i,L(ml(e,t+n,c)))}function J(e,t,n){let o=k(e).length-1,i=o>=(e.least??0),r=e.in_order&&o>0;if(!i&&!r)return d;let l=(u,c,p)=>s`<button
      type="button"
      id=${ml(e,t,c)}
      ?disabled=${p}
      aria-label="${n} ${c}"
      @click=${()=>g0(e,t,u,n)}
    >
      ${u<0?"\u2191":"\u2193"}
    </button>`;return s`<div class="tools">
    ${r?s`${l(-1,"earlier",t===0)} ${l(1,"later",t===o)}`:d}
    ${i?s`<button
            type="button"
            id=${ml(e,t,"drop")}
            aria-label="Remove ${n}"
            @click=${()=>h0(e,t,n)}
          >
            ×
          </button>`:d}
  </div>`}function ee(e,t,n){let o=f0(e),i=Me(e.of??"run",e.at);return s`${be(o,i)}
    <button type="button" id=${o} aria-describedby=${i?`${o}-said`:d} @click=${n}>
      ${t}
    </button>`}var le=()=>a.beside.studio!==void 0,rs=({run:e})=>g("run",e),Hc=({studio:e})=>g("studio",e);function ss(e){return rs(e)===void 0&&le()?{of:"studio",at:e.studio}:{of:"run",at:e.run}}var bn=e=>rs(e)??Hc(e),qe=(e,t)=>h({...t,...ss(e)}),qc=e=>e===void 0||e===""||e!==null&&typeof e=="object"&&!Object.keys(e).length;function as(e,t=""){return e===void 0||qc(e)?[]:e===null||typeof e!="object"||Array.isArray(e)?[[t,e]]:Object.entries(e).flatMap(([n,o])=>as(o,`${t}/${j(n)}`))}function zn(e,t){for(let n=t;n;n=n.slice(0,n.lastIndexOf("/")))$(e,n)!==void 0&&qc($(e,n))&&(e=F(e,n,void 0));return e}var Ki=(e,t)=>t.reduce((n,o)=>zn(F(n,o,void 0),o),e);function B$(e){let t=new Map;return e.flatMap(n=>as(rs(n)).flatMap(([o,i])=>{let r=n.studio+o,l=t.get(r)??g("studio",r);return qc(l)||String(l).startsWith("?")||l===i?(t.set(r,i),[[n.run+o,r,i]]):[]}))}async function Uc(e){le()||await Pa();let t=B$(e);Kt([["studio",n=>t.reduce((o,[,i,r])=>F(o,i,r),n)],["run",n=>Ki(n,t.map(([o])=>o))]]),D("Kept in the studio")}function _0(e){let t=e.flatMap(o=>as(Hc(o)).map(([i,r])=>[o.run+i,r]));Kt([["run",o=>t.reduce((i,[r,l])=>$(i,r)===void 0?F(i,r,l):i,o)]]),D("Said in this run only")}function $0(e){let t=e.flatMap(n=>as(rs(n)).filter(([o])=>g("studio",n.studio+o)!==void 0).map(([o])=>n.run+o));Kt([["run",n=>Ki(n,t)]]),D("Taken from the studio again")}var L$=e=>as(e).length>0;function yo(e,t){if(!le())return d;let n=t.some(r=>L$(rs(r))),o=t.some(r=>L$(Hc(r))),i=(r,l)=>s`<button type="button" aria-label="${e}: ${r}" @click=${l}>${r}</button>`;return s`<span class="who-says">
    <small>${n?"in this run only":o?"from the studio":"kept in the studio"}</small>
    ${n&&B$(t).length?i("Keep in my studio",()=>{Uc(t)}):d}
    ${n&&o?i("As in the studio",()=>$0(t)):d}
    ${!n&&o?i("Otherwise in this run",()=>_0(t)):d}
  </span>`}function zc(e){let t=Object.keys(g("studio","/moulds_owned")??{}),n=a.files?.moulds;return t.find(o=>st(o,n)===st(e,n))??e}var he=(e,t)=>Object.keys(g(e,t)??{}),C$=(e,t)=>`${Y(e,t)}-name`;function Ji({of:e,at:t,label:n,add:o,blank:i,then:r}){let l=C$(e,t),u=()=>{let c=document.getElementById(l),p=c.value.trim();if(!p)return c.focus();if(c.value="",he(e,t).includes(p))return nt(r(p)());q(e,`${p} added`,`${t}/${j(p)}`,i,r(p))};return s`<div class="row">
    <div class="field">
      <label for=${l}>${n}</label>
      <input
        id=${l}
        autocomplete="off"
        spellcheck="false"
        @keydown=${c=>{c.key==="Enter"&&u()}}
      />
    </div>
    <button type="button" @click=${u}>${o}</button>
  </div>`}function ls({of:e,at:t,name:n,label:o,also:i=l=>l,put:r}){let l=`${Y(e,t)}-${he(e,t).indexOf(n)}-called`;return Jc({id:l,name:n,label:o,taken:he(e,t),take:u=>{let c=p=>i(ds(p,t,n,u),u);r?r(c,u):wt(e,`${n} is called ${u}`,c)}})}var Kc;function Jc({id:e,name:t,label:n,taken:o,take:i,hint:r}){let l=c=>{let p=c.target.value.trim(),m=p!==t&&o.includes(p);Kc=m?{id:e,words:`Another is called ${p} already`}:void 0,f({typed:void 0}),!(!p||m||p===t)&&(i(p),D(`${t} is called ${p}`),C(L(e)))},u=Kc?.id===e?Kc.words:void 0;return s`<div class="field ${u?"wants":""}">
    <label for=${e}>${n}</label>
    <input
      id=${e}
      .value=${P(a.typed?.key===e?a.typed.text:t)}
      @input=${c=>f({typed:{key:e,text:c.target.value}})}
      @change=${l}
      autocomplete="off"
      spellcheck="false"
      aria-invalid=${u?"true":"false"}
      aria-describedby=${u||r?`${e}-said`:d}
    />
    ${be(e,u,r)}
  </div>`}function ds(e,t,n,o){let i=Object.entries($(e,t)??{}).map(([r,l])=>[r===n?o:r,l]);return F(e,t,Object.fromEntries(i))}function oi(e,t,n,o=n){let i=r=>zn(F(r,`${t}/${j(n)}`,void 0),t);return s`<div class="tools">
    <button
      type="button"
      aria-label="Remove ${o}"
      @click=${()=>wt(e,`${o} removed`,i,L(C$(e,t)))}
    >
      ×
    </button>
  </div>`}var ii="/pipe/beads",tn=`${ii}/tip`,b0={of:"run",at:tn},wn={at:`${ii}/moves`,in_order:!0},Vc="\0own",N$={tip:"",bead_to_opening:"",moves:[]},en=(e,t)=>({name:e,label:t,kind:"length"}),W$={name:"count",label:"How many",kind:"count"},I$=en("circle_radius","Radius of their circle"),Qc={dollop:{words:"Dollop",does:"A heap in the middle.",measures:[en("diameter","Diameter"),en("height","Height")]},ring:{words:"Ring",does:"One closed turn.",measures:[en("radius","Radius, to the bead's middle")]},spiral:{words:"Spiral",does:"Turns that climb, wider or narrower.",measures:[{name:"turns",label:"Turns",kind:"number"},en("start_radius","Radius at the start"),en("end_radius","Radius at the end"),en("rise","Rise")]},tail:{words:"Tail",does:"Drawn straight up to a point.",measures:[en("length","Length")]},dots:{words:"Dots",does:"Upright dabs on a circle.",measures:[W$,I$,en("height","Height")]},shells:{words:"Shells",does:"Strokes lying outward from a circle.",measures:[W$,I$,en("length","Length")]},bead:{words:"Straight bead",does:"Along the mould.",measures:[en("length","Length"),{name:"aside",label:"Distance from the middle",kind:"signed",optional:!0}]}};function j$(e){return s`${y0()} ${Gc()?hl(b0):R0()}
    ${h({label:"Bead \xF7 tip opening",at:`${ii}/bead_to_opening`,number:!0,hint:"Section of the bead \xF7 opening of the tip: 1 if they are the same."})}
    <h4>What the tip does, in order</h4>
    <div class="items">${k(wn).map((t,n)=>F0(t,n,e))}</div>
    ${C0()}`}var Gc=()=>typeof g("run",tn)=="object",Yc=()=>String(g("run",`${ii}/own_tips`)??g("studio","/own_tips")??"");function w0(){let e=Yc(),t=e?kc(e):[];return g("run",`${ii}/own_tips`)===void 0?[...t,...Yr()]:t}function y0(){let e=n=>n===Vc?q("run","a tip of your own",tn,{name:"",round:{radius:""}},k0):Z("run",tn,n),t=w0().map(n=>[n.name,n.opening?`${n.name} (${n.opening})`:n.name]);return s`${fe({label:"Tip",at:tn,answers:[...t,[Vc,"My own, measured"]],unsaid:"Which tip?",take:e,chosen:Gc()?Vc:void 0})}
  ${Gc()?d:M({name:"tips",pointers:[`${ii}/own_tips`],summary:"Tips of a file of your own",body:()=>h({label:"File of tips",at:`${ii}/own_tips`,optional:!0,hint:"Beside your run, such as studio.tips.json. Emptied, the built-in tips are offered."})})}`}var v0=Ct("run",tn,"own"),k0=Xt(v0);async function x0(){let e=g("run",tn);if(!await Vu())return;let t=te("own_tips","/tips"),n=T0(String(e.name).trim()||"My tip",t);Kt([["own_tips",o=>F(o,`/tips/${t.length}`,{...e,name:n})],["run",o=>F(o,tn,n)]]),D(`${n} kept in ${a.beside.own_tips.file}`)}function T0(e,t){for(let n=1;;++n){let o=n===1?e:`${e} ${n}`;if(![...t,...Yr()].some(i=>i.name===o))return o}}function R0(){let e=O("run",tn),t=Yc();if(!e||!t||!kc(t).some(o=>o.name===e))return d;let n=te("own_tips","/tips").findIndex(o=>o.name===e);return n<0?s`<button type="button" @click=${()=>{Vu()}}>Change this tip of my own</button>`:hl({of:"own_tips",at:`/tips/${n}`})}var E$=[["round","Round"],["star","Star"],["outline","Another outline"]],fl={x:"",y:""},S0={round:{radius:""},star:{points:"",outer_radius:"",inner_radius:""},outline:[fl,fl,fl]};function hl({of:e,at:t}){let n=E$.map(([r])=>r),o=n.find(r=>g(e,`${t}/${r}`)!==void 0),i=r=>({..._e(e,t,n),[r]:S0[r]});return s`<div class="part" id=${Ct(e,t,"own")} role="group" aria-label="My own tip">
    ${W(e,t)} ${A0({of:e,at:t})}
    ${A({of:e,question:"Opening of the tip",at:t,is_told_elsewhere:!0,chosen:o,answers:E$,puts:i})}
    ${o?O0({of:e,at:t},o):d}
    ${M({of:e,name:e==="run"?"hand":`hand ${t}`,pointers:[`${t}/hand`,`${t}/note`],summary:"Correction for your hand",body:()=>P0({of:e,at:t})})}
    ${e==="run"?s`<button type="button" @click=${()=>{x0()}}>Keep this tip for all my runs</button>`:s`<p class="hint">It stands in ${a.beside.own_tips.file}, for every run that names this file.</p>`}
  </div>`}var A0=({of:e,at:t})=>e==="run"?h({label:"What you call the tip",at:`${t}/name`}):Jc({id:Y(e,`${t}/name`),name:O(e,`${t}/name`),label:"What you call the tip",taken:te("own_tips","/tips").map(({name:n})=>String(n)),take:n=>D0(t,n),hint:"The run that lies open and the studio follow; other runs that name it choose it anew."});function D0(e,t){let n=O("own_tips",`${e}/name`),o="/hand",i=zt(Yc())===a.beside.own_tips?.file,r=i&&g("run",tn)===n,l=i&&g("studio",`${o}/${j(n)}`)!==void 0;Kt([["own_tips",u=>F(u,`${e}/name`,t)],...r?[["run",u=>F(u,tn,t)]]:[],...l?[["studio",u=>ds(u,o,n,t)]]:[]])}function P0({of:e,at:t}){let n=`${t}/hand`,o=i=>g(e,i)!==void 0;return s`<div class="row">
      ${h({of:e,label:"Correction for your hand",at:`${n}/correction`,number:!0,short:!0,optional:!0,takes_part:!0,hint:"What your toppings weigh \xF7 what the moves come to."})}
      ${o(`${n}/correction`)?h({of:e,label:"From so many trials",at:`${n}/trials`,count:!0,optional:!0,short:!0}):d}
    </div>
    ${o(n)?s`<button
            type="button"
            @click=${()=>q(e,"correction removed",n,void 0,Xt(Ct(e,t,"own")))}
          >
            Leave the correction out
          </button>`:d}
    ${h({of:e,label:"Note on the tip",at:`${t}/note`,optional:!0})}`}function O0(e,t){if(t==="outline")return M0(e);let{of:n,at:o}=e,i=(r,l)=>h({of:n,label:l,at:`${o}/${t}/${r}`,unit:"mm",short:!0});return s`<div class="row">
    ${t==="round"?i("radius","Radius of the opening"):s`${h({of:n,label:"Points",at:`${o}/star/points`,count:!0,short:!0})}
          ${i("outer_radius","Radius to the points")} ${i("inner_radius","Radius to the notches")}`}
  </div>`}function M0({of:e,at:t}){let n={of:e,at:`${t}/outline`};return s`<p class="hint">
      Its corners in order, seen from the front, as far right (x) and up (y) as they lie; −8 mm is to the left.
    </p>
    ${k(n).map((o,i)=>s`<div class="row" id=${E(n,i)}>
          ${h({of:e,label:`Corner ${i+1}, x`,at:`${n.at}/${i}/x`,unit:"mm",short:!0})}
          ${h({of:e,label:`Corner ${i+1}, y`,at:`${n.at}/${i}/y`,unit:"mm",short:!0})}
          ${J(n,i,`corner ${i+1}`)}
        </div>`)}
    ${ee(n,"One more corner",()=>U(n,fl,"corner"))}`}function F0(e,t,n){let o=Qc[String(e.move)],i=`${wn.at}/${t}`,r=`${t+1}. ${o?.words??String(e.move)}`;return s`<div class="part" id=${E(wn,t)} role="group" aria-label=${r}>
    <div class="part-head">
      <p class="part-title">${r}</p>
      ${J(wn,t,r)}
    </div>
    ${W("run",i)}
    <div class="row">
      ${(o?.measures??[]).map(l=>L0(i,l))}
      ${h({label:"Starts at height",at:`${i}/at_height`,unit:"mm",optional:!0,short:!0})}
    </div>
    ${B0(t,n)}
  </div>`}function L0(e,{name:t,label:n,kind:o,optional:i}){let r=o==="signed"?"\u221212 mm is to the other side.":void 0,l=o==="length"||o==="signed"?"mm":void 0;return h({label:n,at:`${e}/${t}`,unit:l,hint:r,optional:i,short:!0,count:o==="count",number:o==="number"})}function B0(e,t){let n=t?.visible_by?.moves??[],o=n[e];if(!o||n.length!==k(wn).length)return d;let i=o.length_mm>0?`${S(o.length_mm/10,1)} cm of bead`:"";return I({key:`pipe.move.${e}`,label:"Lays down",note:i,shown:ke(a.units,o.volume_ml),of:`pipe.visible_by.moves.${e}.volume_ml`})}function C0(){let e=o=>({move:o,...Object.fromEntries(Qc[o].measures.filter(i=>!i.optional).map(i=>[i.name,""]))}),t=Y("run",wn.at),n=Me("run",wn.at);return k(wn).length||bt("run",wn.at,t,"What the tip does"),s`${be(t,n)}
    <div
      class="choice words"
      role="group"
      id=${t}
      tabindex="-1"
      aria-label="Add a move"
      aria-describedby=${n?`${t}-said`:d}
    >
      ${Object.entries(Qc).map(([o,{words:i,does:r}])=>s`<button type="button" @click=${()=>U(wn,e(o),i)}>
            <b>+ ${i}</b> <small>${r}</small>
          </button>`)}
    </div>
    <p class="hint">
      Without a height a move starts on the paper; a spiral or a tail goes on where the move before it ended.
    </p>`}function yn(e,t=()=>{}){if(!e.theirs)return d;let n=Ko(e),o=`conflict-${e.file.replaceAll(/[^\w]/g,"-")}`,i=()=>{og(e),t()};return s`<section class="banner" aria-labelledby=${o}>
    <h2 id=${o}>${e.file} was ${n?"deleted":"changed outside this page"}</h2>
    <p>
      ${n?"Another program or browser tab deleted it. What stands on this page can be saved again, or be forgotten with it.":"Another program or browser tab saved it. Which version do you want to keep?"}
    </p>
    ${e.failed?s`<p class="complaint" role="status">Not loaded: ${e.failed}.</p>`:d}
    <div class="choice">
      ${n?s`<button type="button" @click=${i}>Save it again</button>
              <button type="button" @click=${()=>ig(e)}>Leave it deleted</button>`:s`<button type="button" @click=${()=>ng(e)}>Load the saved file</button>
              <button type="button" @click=${i}>Overwrite it with this page</button>`}
    </div>
  </section>`}function vn(e){if(e.theirs||!e.set_aside||Ai(e)&&!e.is_taken)return d;let t=()=>{Ai(e)&&Go(),rg(e)};return s`<section class="banner quiet" aria-label="${e.file} was changed">
    <p>
      ${e.file} was changed outside this page, and stands here as it is
      now.${e.is_taken?"":" What you typed is still here."}
    </p>
    <div class="choice">
      <button type="button" @click=${t}>Change to the other text</button>
      ${e.is_taken?s`<button type="button" @click=${()=>eg(e)}>Close</button>`:d}
    </div>
  </section>`}var gl={kind:"",inci:"",inci_sodium_soap:"",saponification_value:{low:"",high:""},source:""};function q$(e,t){let n=Qr(e);if(!Array.isArray(n)||!n.some(u=>u.id===t))return d;let i=te("own_fats","/fats").findIndex(u=>u.id===t);if(!(i>=0&&a.beside.own_fats!==void 0))return s`<button type="button" @click=${()=>{W0(e,t)}}>Change this fat of my own</button>`;let l=`/fats/${i}`;return M({of:"own_fats",name:t,pointers:[l],summary:`My own fat, in ${a.beside.own_fats.file}`,body:()=>Lt({part:O("own_fats",`${l}/name`)||"Your own fat"},()=>Zc(l))})}async function W0(e,t){await Oa(e),Ge("own_fats",t);let n=te("own_fats","/fats").findIndex(o=>o.id===t);C(L(`f-own_fats-fats-${n}-name`))}var I0=[["triglyceride","Oil, fat or butter"],["wax_ester","Wax"],["free_fatty_acid","Fatty acid"]];function Zc(e){let t=(n,o,i,r=!1)=>h({of:"own_fats",label:o,at:`${e}/${n}`,hint:i,optional:r});return s`${W("own_fats",e)}
    <p class="hint">All of it stands in the supplier's document. Every formula that names this file knows the fat.</p>
    <div class="row">
      ${t("name","Name of the fat")} ${t("source","The document","Supplier, name, date.")}
      ${t("lot","Lot",void 0,!0)}
    </div>
    ${A({of:"own_fats",question:"What it is",at:`${e}/kind`,chosen:O("own_fats",`${e}/kind`)||void 0,answers:I0,puts:n=>n,hint:"Jojoba is a wax; beeswax and lanolin are waxes too."})}
    ${E0(`${e}/saponification_value`)}
    <div class="row">
      ${t("inci","INCI name")}
      ${t("inci_sodium_soap","INCI name of its sodium soap","Such as Sodium Olivate.")}
      ${t("inci_potassium_soap","INCI name of its potassium soap","Left out, it is formed from the other.",!0)}
    </div>
    ${M({of:"own_fats",name:`${e} more`,pointers:["iodine_value","density","melting_range","unsaponifiable","fatty_acids","note"].map(n=>`${e}/${n}`),summary:"Iodine value, density, fatty acids",body:()=>N0(e)})}`}function E0(e){let t=g("own_fats",e),n=t!==null&&typeof t=="object"?"range":"one",o=(i,r,l=!1)=>h({of:"own_fats",label:r,at:i,number:!0,short:!0,optional:l,unit:"mg KOH/g"});return s`${A({of:"own_fats",question:"Saponification value, mg of KOH for 1 g of fat (ISO 3657), never of NaOH",at:e,is_told_elsewhere:!0,chosen:n,answers:[["range","Lowest and highest"],["one","One value"]],puts:i=>i==="one"?"":{low:"",high:""}})}
    <div class="row">
      ${n==="one"?o(e,"Saponification value"):s`${o(`${e}/low`,"Lowest")} ${o(`${e}/typical`,"Typical",!0)}
            ${o(`${e}/high`,"Highest")}`}
    </div>`}function N0(e){let t=(o,i,r,l)=>{let u=`${e}/${o}`,c=g("own_fats",u)!==void 0,p=()=>q("own_fats",`${i}: ${c?"left out":"added"}`,u,c?void 0:r);return s`<div class="part" role="group" aria-label=${i}>
      <div class="part-head">
        <p class="part-title">${i}</p>
        <button type="button" aria-label="${c?"Leave out":"Add"} ${i.toLowerCase()}" @click=${p}>
          ${c?"Leave out":"Add"}
        </button>
      </div>
      ${c?s`${W("own_fats",u)}${l()}`:d}
    </div>`},n=(o,i,r,l=!1)=>h({of:"own_fats",label:i,at:`${e}/${o}`,unit:r,number:l,short:!0});return s`<div class="items">
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
    ${j0(`${e}/fatty_acids`)}
    <div class="row">
      ${h({of:"own_fats",label:"Unsaponifiable, at most",at:`${e}/unsaponifiable`,unit:"%",optional:!0,short:!0})}
      ${h({of:"own_fats",label:"Note on the fat",at:`${e}/note`,optional:!0})}
    </div>`}var H$=[["C8:0","Caprylic, C8:0"],["C10:0","Capric, C10:0"],["C12:0","Lauric, C12:0"],["C14:0","Myristic, C14:0"],["C16:0","Palmitic, C16:0"],["C16:1","Palmitoleic, C16:1"],["C18:0","Stearic, C18:0"],["C18:1","Oleic, C18:1"],["C18:2","Linoleic, C18:2"],["C18:3","Linolenic, C18:3"],["C20:0","Arachidic, C20:0"],["C20:1","Gondoic, C20:1"],["C22:0","Behenic, C22:0"],["C22:1","Erucic, C22:1"]];function j0(e){let t=Object.keys(g("own_fats",e)??{}),n=H$.filter(([l])=>!t.includes(l)),o=l=>H$.find(([u])=>u===l)?.[1]??l,i=l=>`${e}/${j(l)}`,r=l=>{let u=Array.isArray(g("own_fats",i(l))),c=(p,m)=>h({of:"own_fats",label:`${o(l)}, ${m}`,at:`${i(l)}/${p}`,unit:"%",short:!0});return s`<div class="row">
      ${u?s`${c(0,"lowest")} ${c(1,"highest")}`:h({of:"own_fats",label:o(l),at:i(l),unit:"%",short:!0})}
      <button
        type="button"
        aria-label="Remove ${o(l)}"
        @click=${()=>q("own_fats",`${o(l)} removed`,t.length>1?i(l):e,void 0)}
      >
        ×
      </button>
    </div>`};return s`<p class="question">
      Fatty acids, as the document lists them: the saponification value is checked against them
    </p>
    ${W("own_fats",e)} ${t.map(r)}
    <div class="row">
      ${fe({label:"Add a fatty acid",of:"own_fats",at:`${e}/`,answers:n,unsaid:"choose ...",optional:!0,chosen:"",take:l=>l&&q("own_fats",`${o(l)} added`,i(l),["",""])})}
    </div>`}function Vi(e){let{pieces:t,batches:n,batch_limits:o,around:i,...r}=e,[l]=n,{pour:u,pipe:c,dust:p,lye_pot:m,bottles:_}=l;return{...r,pour:u,pipe:c,dust:p,lye_pot:m,bottles:_,batch:l,place:"batches.0",whippings:c?.whippings??[],whole:e}}var z=(e,t,n=`${t}s`)=>`${e} ${e===1?t:n}`,H0=e=>e.cut?["loaf","loaves"]:["cast","casts"];function nn(e,{pieces:t,casts:n}){let o=e.cut?z(t,"bar"):z(t,"piece");return n===t?o:`${o} from ${z(n,...H0(e))}`}var q0=e=>e===1?"once":`${e} times`,Xc=e=>e.batches.length>1,Ye=e=>e.pieces.batches>1;function we(e){return Ye(e.whole)?`one batch, ${nn(e.whole,e.batch)}`:""}var U$=({whippings:e})=>e.length>1||(e[0]?.count??0)>1;function ep(e,t){return U$(e)?`${nn(e.whole,t)}${t.count>1?`, whipped ${q0(t.count)}`:""}`:""}function _l(e,t){let n=ep(e,t);return n&&`one whipping: ${n}`}var z$=e=>Ye(e.whole)||U$(e),$l=(e,t)=>`${z(e,"filling")} of ${z(t,"cavity","cavities")}`;var K$=e=>[...a.files?.runs??[],...a.files?.orders??[],...a.files?.formulas??[]].find(t=>t.file===e)?.name||e;function bl(e){let t=e?.used_by??[];return t.length?s`<p class="aside">Used by ${Ne(t.map(K$))}.</p>`:d}function Qi(e){let t=e?.used_by??[];return t.length<2?d:s`<p class="mind" role="note">
    <strong>Caution</strong> Used by ${Ne(t.map(K$))}: a change here changes
    ${t.length===2?"both":`all ${t.length}`}.
  </p>`}var us={of:"own_fats",at:"/fats",least:1},wl={of:"own_tips",at:"/tips",least:1},ri=({of:e,at:t})=>te(e,t);function J$(e){return Q$(e,us,"fats",t=>{let n=`/fats/${t}`;return M({of:"own_fats",name:String(ri(us)[t].id),pointers:[n],summary:s`<span
        >${O("own_fats",`${n}/name`)||"Without a name"}<small
          >${U0(`${n}/saponification_value`)}</small
        ></span
      >`,body:()=>Zc(n)})})}function U0(e){let t=g("own_fats",e),n=t!==null&&typeof t=="object"&&!Array.isArray(t)?t:void 0,o=n?[n.low,n.high].filter(i=>i!=="").join(" to "):String(t??"");return o?`${o} mg KOH/g`:"saponification value not given"}function V$(e){return Q$(e,wl,"tips",t=>{let n=`/tips/${t}`;return s`<div class="tip-row">
      ${T$(ri(wl)[t])}
      ${M({of:"own_tips",name:`tip ${t}`,pointers:[n],summary:O("own_tips",`${n}/name`)||"Without a name",body:()=>hl({of:"own_tips",at:n})})}
    </div>`})}function Q$(e,t,n,o){let i=a.files?.[n].find(({file:l})=>l===e.file),r=l=>String(ri(t)[l].name||`number ${l+1}`);return s`${yn(e)} ${vn(e)}
    <section class="card" aria-labelledby="held-title">
      <h2 id="held-title" tabindex="-1">In ${e.file}</h2>
      ${Qi(i)}
      ${e.shipped?s`<p class="aside">Built-in: your first change is saved as a copy.</p>`:d}
      <div class="items">
        ${ri(t).map((l,u)=>s`<div class="held" id=${E(t,u)} role="group" aria-label=${r(u)}>
              ${o(u)} ${J(t,u,r(u))}
            </div>`)}
      </div>
    </section>`}var tp=(e,t)=>({...gl,id:ll(e,t),name:e});function G$(e){let t=tp(e,[...a.fats,...ri(us)]);U(us,t,e),Ge("own_fats",String(t.id)),C(oe("own_fats",`/fats/${ri(us).length-1}/source`))}var np=e=>({name:e});function Y$(e){U(wl,np(e),e);let t=ri(wl).length-1;Ge("own_tips",`tip ${t}`),C(Xt(Ct("own_tips",`/tips/${t}`,"own")))}var Z$=(e,t,n)=>{let o=new Map;for(let i=t;i<=n;i++)o.set(e[i],i);return o},yl=rl(class extends ji{constructor(e){if(super(e),e.type!==jn.CHILD)throw Error("repeat() can only be used in text expressions")}dt(e,t,n){let o;n===void 0?n=t:t!==void 0&&(o=t);let i=[],r=[],l=0;for(let u of e)i[l]=o?o(u,l):l,r[l]=n(u,l),l++;return{values:r,keys:i}}render(e,t,n){return this.dt(e,t,n).values}update(e,[t,n,o]){let i=m$(e),{values:r,keys:l}=this.dt(t,n,o);if(!Array.isArray(i))return this.ut=l,r;let u=this.ut??=[],c=[],p,m,_=0,b=i.length-1,y=0,T=r.length-1;for(;_<=b&&y<=T;)if(i[_]===null)_++;else if(i[b]===null)b--;else if(u[_]===l[y])c[y]=$o(i[_],r[y]),_++,y++;else if(u[b]===l[T])c[T]=$o(i[b],r[T]),b--,T--;else if(u[_]===l[T])c[T]=$o(i[_],r[T]),Hi(e,c[T+1],i[_]),_++,T--;else if(u[b]===l[y])c[y]=$o(i[b],r[y]),Hi(e,i[_],i[b]),b--,y++;else if(p===void 0&&(p=Z$(l,y,T),m=Z$(u,_,b)),p.has(u[_]))if(p.has(u[b])){let V=m.get(l[y]),ze=V!==void 0?i[V]:null;if(ze===null){let Fo=Hi(e,i[_]);$o(Fo,r[y]),c[y]=Fo}else c[y]=$o(ze,r[y]),Hi(e,i[_],ze),i[V]=null;y++}else al(i[b]),b--;else al(i[_]),_++;for(;y<=T;){let V=Hi(e,c[T+1]);$o(V,r[y]),c[y++]=V}for(;_<=b;){let V=i[_++];V!==null&&al(V)}return this.ut=l,sl(e,c),Je}});async function pe(e){f({list_complaint:""});try{await e()}catch(t){f({list_complaint:t instanceof Error?t.message:String(t)}),t instanceof w&&await Ot().catch(()=>{})}}var op=()=>{pe(zg)},X$=()=>{pe(Kg)};function Wt(e){return s`<h1 tabindex="-1">${e}</h1>
    ${a.list_complaint?s`<p class="alarm" role="alert">${a.list_complaint}</p>`:d}
    ${a.list_told&&jr()?s`<p class="told" role="status">
            ${a.list_told} <button type="button" @click=${op}>Undo</button>
          </p>`:d}
    ${(a.files?.cut??[]).map(t=>s`<p class="alarm">
          More lies in ${t.folder} than is looked at: ${t.looked_at} files and folders. Some of your runs, moulds or
          formulas may be missing below; keep them in a folder of their own, and start brimwright there.
        </p>`)}`}var eb=new Map,tb=Promise.resolve();function nb(e,t=""){let n=`${e}
${t}`,o=eb.get(n);return o||(o=tb.then(()=>z0(e)),tb=o,eb.set(n,o)),o}async function z0(e){try{let t=await dn({kind:"glb",gauge:{file:e}}),n=Mi(await t.arrayBuffer());return qr(n.find(o=>o.name==="cavity")??n[0])}catch(t){if(t instanceof w)return;throw t}}var ip=class extends HTMLElement{static observedAttributes=["file","changed"];#n;#e=new IntersectionObserver(([t])=>t.isIntersecting&&this.#t(),{rootMargin:"200px"});connectedCallback(){this.#e.observe(this)}disconnectedCallback(){this.#e.disconnect()}attributeChangedCallback(){this.#e.disconnect(),this.isConnected&&this.#e.observe(this)}#t(){this.#e.disconnect();let t=this.getAttribute("file")??"";requestIdleCallback(()=>{nb(t,this.getAttribute("changed")??"").then(n=>{t===this.getAttribute("file")&&(this.#n=n,this.#i())})},{timeout:1e3})}#i(){let t=this.#n;if(!t)return void St(d,this);let{left:n,right:o,floor:i,brim:r,loops:l}=t,u=.04*Math.max(o-n,r-i),c=[n-u,-r-u,o-n+2*u,r-i+2*u];St(s`<svg viewBox=${c.join(" ")} aria-hidden="true">
        <path class="shaded pour" fill-rule="evenodd" d=${Hr(l)} />
      </svg>`,this)}};customElements.define("mould-picture",ip);var on=(e,t)=>s`<ul class="cards">
    ${yl(e,({file:n})=>n,t)}
  </ul>`;function kn(e){let{one:t,facts:n,picture:o,open:i}=e,r=a.list_open?.file===t.file?a.list_open:void 0,l=t.name||t.file;return s`<li class="file">
    <button type="button" class="open" @click=${()=>{pe(i)}}>
      ${o?s`<mould-picture file=${o}></mould-picture>`:d}
      <span class="told-of"
        ><b>${l}</b>${n.length?s`<span>${n.join(", ")}</span>`:d}
        <span class="file-name">${t.shipped?"built-in":t.file}</span></span
      >
    </button>
    <button
      type="button"
      class="dots"
      aria-expanded=${r?"true":"false"}
      aria-label="Name, note, copy or remove: ${l}"
      @click=${()=>K0(e,!r)}
    >
      <span aria-hidden="true">⋯</span>
    </button>
    ${r?J0(e,r):d}
  </li>`}function K0({one:e},t){let{file:n,name:o,note:i}=e;f({list_open:t?{file:n,name:o,note:i,stem:Zo(n)}:void 0})}function J0(e,t){let{kind:n,one:o}=e,i=s`<button type="button" @click=${()=>{pe(()=>Q0(n,o))}}>Copy</button>`;if(o.shipped)return s`<div class="acts"><div class="choice">${i}</div></div>`;let r=["name","note"].every(c=>o[c]===t[c])&&Zo(o.file)===t.stem,l=n.name==="fats"||n.name==="tips"||t.name.trim()!=="",u=()=>{pe(()=>G0(e,t))};return s`<div class="acts">
    ${bl(o)} ${n.called?rp(n.called==="for"?"For":"Name",t,"name"):d}
    ${n.name==="tips"?d:rp("Note",t,"note")} ${rp("Name of the file",t,"stem")}
    <div class="choice">
      <button type="button" class="strong" ?disabled=${r||!l||!t.stem.trim()} @click=${u}>
        Save
      </button>
      ${i}
      <button type="button" @click=${()=>{pe(()=>ib(o,t,!1))}}>Remove</button>
    </div>
    ${t.used_by?V0(o,t):d}
  </div>`}function rp(e,t,n){let o=`list-${n}`,i=r=>v(t,{[n]:r.target.value});return s`<div class="field">
    <label for=${o}>${e}</label>
    <input id=${o} .value=${P(t[n])} @input=${i} autocomplete="off" spellcheck="false" />
  </div>`}function V0(e,t){return s`<div role="alert">
    <p class="alarm">${t.used_by.join(", ")} cannot be planned without it.</p>
    <button type="button" @click=${()=>{pe(()=>ib(e,t,!0))}}>Remove it even so</button>
  </div>`}async function Q0(e,t){let n=await Jg(e,t),o=a.files?.[e.list].find(i=>i.file===n);o&&(f({list_open:{file:n,name:o.name,note:o.note,stem:Zo(n)}}),requestAnimationFrame(()=>document.querySelector("#list-name, #list-stem")?.select()))}async function G0({kind:e,one:t},n){let{name:o,note:i,stem:r}=n;await Qg(e,t,{name:o.trim(),note:i.trim(),stem:r.trim()}),ob(n)}function ob(e){a.list_open===e&&f({list_open:void 0})}async function ib(e,t,n){let o=e.used_by??[];if(o.length&&!n)return v(t,{used_by:o});try{await Gg(e,n),ob(t)}catch(i){let r=i instanceof w?i.answer.used_by:void 0;if(!r)throw i;v(t,{used_by:r})}}function vl(e,t,n){let o=[...a.files?.[e.list]??[]].sort((r,l)=>Number(r.shipped)-Number(l.shipped));return o.length?on(o,r=>kn({kind:e,one:r,facts:Y0(r),open:()=>n(r.file)})):s`<p class="aside">None yet. ${t}</p>`}var rb=4;function Y0({holds:e=[],changed:t}){let n=e.length-rb,o=n>0?[...e.slice(0,rb),`${n} more`]:e;return[o.length?Ne(o):"",t?`changed ${N(t)}`:""].filter(Boolean)}var cs="";function kl({label:e,add:t,act:n,tried:o}){let i=()=>{o(async()=>{await n(cs.trim()),cs="",Q()})},r=l=>{cs=l.target.value,Q()};return s`<div class="row">
    <div class="field">
      <label for="new-held">${e}, by name</label>
      <input id="new-held" .value=${P(cs)} @input=${r} autocomplete="off" spellcheck="false" />
    </div>
    <button type="button" ?disabled=${!cs.trim()} @click=${i}>${t}</button>
  </div>`}function It(e){let t=a.removed.filter(n=>n.kind===e);return t.length?s`<details class="removed">
    <summary>Removed, and kept still: ${t.length}</summary>
    <p class="hint">
      What is removed is kept for two years, and comes back from here. Later it is deleted when something else is
      removed.
    </p>
    <ul class="limits">
      ${t.map(Z0)}
    </ul>
  </details>`:d}function Z0(e){let t=e.name||e.file,n=`removed ${e.removed}`,o=a.open.has(n);return s`<li>
    <p>
      <b>${t}</b> <small>${e.file}, removed ${N(e.removed_at)}, kept until ${N(e.kept_until)}</small>
    </p>
    <div class="choice">
      <button type="button" aria-label="Bring back ${t}" @click=${()=>{pe(()=>Yg(e))}}>
        Bring back
      </button>
      ${o?s`<button
                type="button"
                aria-label="Delete ${t} for good"
                @click=${()=>{pe(()=>Zg(e))}}
              >
                Delete it for good
              </button>
              <button type="button" @click=${()=>He("open",n)}>Keep it</button>`:s`<button type="button" aria-label="Delete ${t} ..." @click=${()=>He("open",n)}>
              Delete ...
            </button>`}
    </div>
  </li>`}function ab(){let e=uo();return s`${Wt("Fats")}
    <section aria-labelledby="own-fats">
      <h2 id="own-fats">Your own fats</h2>
      ${vl(un,"Each file is named by the formulas that use its fats.",t=>Nr(un,t))}
      ${e?J$(e):d}
      ${kl({label:"A new fat of your own",add:e?`Add it to ${e.file}`:"Begin a file with it",act:t=>e?Promise.resolve(G$(t)):Ma(un,tp(t,a.fats)),tried:pe})}
    </section>
    ${X0()} ${It("fats")}`}var sb="fats that are listed";function X0(){let e=a.finding?.key===sb?a.finding.text:"",t=a.fats.filter(n=>Hn(n,e)!==void 0);return s`<section aria-labelledby="built-in-fats">
    <h2 id="built-in-fats">Built-in fats</h2>
    <div class="row">
      <div class="field">
        <label for="find-fat">Find by any name</label>
        <input
          id="find-fat"
          .value=${P(e)}
          @input=${n=>f({finding:{key:sb,text:n.target.value}})}
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
          ${t.map(n=>eS(n,e))}
        </tbody>
      </table>
    </div>
    ${t.length?d:s`<p class="hint">None is called so.</p>`}
  </section>`}function eS(e,t){let{low:n,high:o,typical:i}=e.saponification_value_mg_koh_per_g,r=Hn(e,t),l=u=>S(u,1);return s`<tr>
    <th scope="row">${e.name}${r&&r!==e.name?s` <small>${r}</small>`:d}</th>
    <td>${l(i)} <small>${l(n)} to ${l(o)}</small></td>
    <td>${e.inci}</td>
  </tr>`}var lb=e=>e.goes_into==="lye",db=({role:e})=>e==="alkali",tS=e=>db(e)?"down":"nearest",si=(e,t)=>X(e,t,tS(t));function xl(e){let t=e.ingredients.map((i,r)=>({one:i,i:r})).filter(({one:i})=>lb(i)),n=({one:i})=>i.role==="water",o=({one:i})=>db(i);return[...t.filter(n),...t.filter(i=>!n(i)&&!o(i)),...t.filter(o)]}function ub(e){return e.ingredients.map((t,n)=>({one:t,i:n})).filter(({one:t})=>!lb(t))}function sp(e){let t=O(e,"/measured_density");return s`<section class="card" aria-labelledby="pouring-title">
    <h2 id="pouring-title">Pouring and curing</h2>
    <div class="row">
      ${h({label:"Temperature at the pour",of:e,at:"/pour_temperature",hint:"The batter's, with its unit: 38 \xB0C, 100 \xB0F.",term:"batter"})}
      ${h({label:"Cure",of:e,at:"/cure",unit:"days",optional:!0,hint:"Such as 35 days.",term:"cure"})}
    </div>
    <div class="row">
      ${h({label:"Unmould after",of:e,at:"/unmould_after",unit:"h",optional:!0,hint:"From the pour on, whatever the mould's own hours are: 18 h."})}
      ${h({label:"Cut within",of:e,at:"/cut_within",unit:"h",optional:!0,hint:"From the pour on: 48 h. A salt bar is cut the day it is poured: 5 h."})}
    </div>
    ${rS(e)}
    ${M({of:e,name:"density",pointers:["/measured_density"],summary:`Measured density${t&&`: ${t}`}`,body:()=>h({label:"Of the plain, unwhipped batter, by weigh-cup",of:e,at:"/measured_density",unit:"g/ml",optional:!0,hint:"Taken in place of the computed one, and compared with it."})})}
  </section>`}var nS=[["unsaid","Not given"],["share","As a share"],["law","As a course in time"],["weighed","From my weighings"]],cb={after:"",mass:""},pb=3,oS={unsaid:{},share:{water_lost_in_cure:""},law:{drying:{water_lost_in_the_end:"",time_to_63_percent:""}},weighed:{drying:{weighings:Array.from({length:pb},()=>cb)}}};function iS(e){return g(e,"/drying/weighings")!==void 0?"weighed":g(e,"/drying")!==void 0?"law":g(e,"/water_lost_in_cure")===void 0?"unsaid":"share"}function rS(e){let t=iS(e);return s`${A({of:e,question:"Water that leaves in the cure",at:"",asked_at:"/drying",chosen:t,answers:nS,puts:o=>({..._e(e,"",["drying","water_lost_in_cure"]),...oS[o]})})}
  ${t==="share"?s`<div class="row">
          ${h({label:"Of the batter's water, gone when it is sold",of:e,at:"/water_lost_in_cure",unit:"%"})}
        </div>`:d}
  ${t==="law"?s`<div class="row">
          ${h({label:"Of the batter's water, gone in the end",of:e,at:"/drying/water_lost_in_the_end",unit:"%"})}
          ${h({label:"After this, 63 % of that is gone",of:e,at:"/drying/time_to_63_percent",unit:"days"})}
        </div>`:d}
  ${t==="weighed"?sS(e):d}`}function sS(e){let t={of:e,at:"/drying/weighings",least:pb};return s`<p class="hint">Of one plain piece, or of the same few together, in order of time.</p>
    ${k(t).map((n,o)=>s`<div class="row named" id=${E(t,o)}>
          ${h({label:"Time since the pour",of:e,at:`${t.at}/${o}/after`,unit:"days",short:!0})}
          ${h({label:"Mass",of:e,at:`${t.at}/${o}/mass`,unit:"g",short:!0})}
          ${J(t,o,`weighing ${o+1}`)}
        </div>`)}
    ${ee(t,"One more weighing",()=>U(t,cb,"weighing"))}`}var aS=["citric acid, anhydrous","citric acid monohydrate","lactic acid (100 %)","acetic acid (100 %)","ascorbic acid","malic acid","tartaric acid","potassium hydrogen tartrate","oxalic acid, anhydrous","oxalic acid dihydrate","glycolic acid (100 %)","salicylic acid","benzoic acid","phosphoric acid (100 %)","vinegar, 5 g acetic acid per 100 g","lactic acid 88 % (of which part is lactate ester, titrated as total acid)","sodium bicarbonate","potassium bicarbonate"],Tl=e=>go(e).map(t=>[t.id,t.name]),mb=["unsaid","Not given"],fb=["none","Holds none"],hb=e=>e===void 0?"unsaid":e==="none"?"none":"some",lS=e=>t=>t==="some"?e:t==="none"?"none":void 0;function gb(e,t){return ap(e,`${t}/contains_fat`,[mb,fb,["some","Holds fat"]],Tl(e))}function ap(e,t,n,o){let i=hb(g(e,t)),r=n.some(([l])=>l===i)?i:void 0;return s`${A({of:e,question:"Fat in it",at:t,chosen:r,answers:n,puts:lS({fat:"",share:""})})}
  ${i==="some"?s`<div class="row">
          ${fe({label:"Which fat",of:e,at:`${t}/fat`,answers:o,unsaid:"choose ..."})}
          ${h({label:"Fat in what is weighed",of:e,at:`${t}/share`,unit:"%",short:!0})}
        </div>`:d}`}var dS=[mb,fb,["some","Holds acid"],["typed","By what it takes up"]],uS={unsaid:void 0,none:"none",some:{acid:"",share:""},typed:{takes_up:""}};function lp(e,t){let n=`${t}/contains_acid`,o=g(e,`${n}/takes_up`)!==void 0?"typed":hb(g(e,n));return s`${A({of:e,question:"Acid in it",at:n,chosen:o,answers:dS,puts:i=>uS[i]})}
  ${o==="some"?s`<div class="row">
          ${fe({label:"Which acid",of:e,at:`${n}/acid`,answers:aS.map(i=>[i,i]),unsaid:"choose ..."})}
          ${h({label:"Of that acid in what is weighed",of:e,at:`${n}/share`,unit:"%",short:!0})}
        </div>`:d}
  ${o==="typed"?s`<div class="row">
          ${h({label:"Taken up by 1 g of it",of:e,at:`${n}/takes_up`,unit:"mg KOH/g",hint:"From its supplier's document."})}
        </div>`:d}
  ${o==="some"||o==="typed"?dp(e,`${n}/confirmed`,"An essence or concentrate, stronger than a juice, vinegar, wine or sour milk"):d}`}function dp(e,t,n){let o=g(e,t)===!0?"yes":"no";return A({of:e,question:n,at:t,chosen:o,answers:[["no","No"],["yes","Yes"]],puts:i=>i==="yes"?!0:void 0})}var cS=["tsp/lb","tbsp/lb","tsp/kg"],Rl=["%","g/kg",...cS].flatMap(e=>[`${e} of fats`,`${e} of batter`]),$b=[...Rl,"% of finished soap","g/kg of finished soap"];function _b(e,t){let n=e.trim().replaceAll(/\s+/g," "),o=[...t].sort((i,r)=>r.length-i.length).find(i=>n.endsWith(i))??"";return[o?n.slice(0,-o.length).trim():e,o]}function Sl(e,t,n,o,i=!1){let r=Y(e,t),[l,u]=_b(O(e,t),o),c=a.typed?.key===r?a.typed.text:l;!i&&!(l.trim()&&u)&&bt(e,t,r,l.trim()?`${n}: of what`:n);let m=Qe(e,t),_=(y,T)=>{let V=`${y.trim()} ${T}`.trim();Z(e,t,i&&!y.trim()?void 0:V),Q()},b=y=>{let T=y.target.value,[V,ze]=_b(T,o);f({typed:{key:r,text:T}}),_(V,ze||u)};return s`<div class="field rate ${m?"wants":""}">
    <label for=${r}>${n}</label>
    <div class="rate-of">
      <input
        id=${r}
        .value=${P(c)}
        @input=${b}
        @blur=${ni}
        inputmode="text"
        autocomplete="off"
        spellcheck="false"
        aria-invalid=${m?"true":"false"}
        aria-describedby=${m?`${r}-said`:d}
      />
      <select
        aria-label="${n}: of what"
        @change=${y=>_(c,y.target.value)}
      >
        <option value="" .selected=${P(u==="")}>of what?</option>
        ${o.map(y=>s`<option value=${y} .selected=${P(y===u)}>${y}</option>`)}
      </select>
    </div>
    ${be(r,m)}
  </div>`}function pS(e){let t=e.map(i=>/^\s*(\d+(?:[.,]\d+)?)\s*%\s*$/.exec(String(i??""))?.[1]),n=t.filter(i=>i!==void 0).map(i=>Number(i.replace(",","."))),o=n.reduce((i,r)=>i+r,0);return{sum:Math.round(o*1e6)/1e6,unread:t.length-n.length}}var mS=.01+1e-9;function Gi(e,t){let{sum:n,unread:o}=pS(t),i=l=>`${String(Math.round(l*1e6)/1e6)} %`;if(o===t.length)return`${e} have no share yet.`;if(o)return`${e} add to ${i(n)} so far; ${o===1?"one has no share that can be added":`${o} have no share that can be added`}.`;let r=100-n;return Math.abs(r)<=mS?`${e} add to ${i(n)}.`:r>0?`${e} add to ${i(n)}: ${i(r)} ${r===1?"is":"are"} missing.`:`${e} add to ${i(n)}: ${i(-r)} too much.`}var wb=(e,t)=>go(e).find(n=>n.id===t)?.name??t,ps=e=>({of:e,at:"/fats",in_order:!0,stays:!0}),ms=e=>k(ps(e));function cp(e){let t=ms(e),n=a.picking?.of===e&&a.picking.row===t.length;return s`<section class="card" aria-labelledby="fats-title">
    <h2 id="fats-title">Fats</h2>
    <ol class="formula-rows">
      ${t.map((o,i)=>fS(e,i,t))}
    </ol>
    <p class="total" role="status">
      ${t.length?Gi("The fats",t.map(o=>o.share)):"No fat yet."}
    </p>
    ${t.length?d:bt(e,"/fats",Y(e,"/fats"),"The fats")}
    ${n?kb(e):ee(ps(e),"Add a fat",()=>yb(e,t.length))} ${vS(e)}
  </section>`}function fS(e,t,n){let o=`/fats/${t}`,i=wb(e,String(n[t].fat??""))||"Which fat?",r=Me(e,`${o}/fat`)??Me(e,o),l=a.picking?.of===e&&a.picking.row===t;return s`<li class="formula-row" id=${E(ps(e),t)}>
    <div class="fat-line">
      <button
        type="button"
        class="fat-name"
        id=${Y(e,`${o}/fat`)}
        aria-expanded=${l?"true":"false"}
        aria-label="${i}: choose another fat"
        @click=${()=>l?up():yb(e,t)}
      >
        ${i}
      </button>
      ${h({label:"Share",of:e,at:`${o}/share`,unit:"%",short:!0})} ${J(ps(e),t,i)}
    </div>
    ${r?s`<p class="complaint">${r}</p>`:d} ${l?kb(e):d}
    ${q$(e,String(n[t].fat??""))}
    ${M({of:e,name:o,pointers:[`${o}/saponification_value`,`${o}/confirmed`,`${o}/lot`],summary:`Your lot${_S(n[t])}`,body:()=>wS(e,t)})}
  </li>`}function yb(e,t){f({picking:{of:e,row:t,text:""}}),C(L("find-fat")),requestAnimationFrame(()=>document.querySelector(".picker")?.scrollIntoView({block:"start"}))}function up(){let e=a.picking;f({picking:void 0}),e&&C(oe(e.of,e.row<ms(e.of).length?`/fats/${e.row}/fat`:"/fats"))}function pp(e,t){let{row:n}=a.picking,o=ms(e);f({picking:void 0});let i=o[n]?{fat:t,share:o[n].share??""}:{fat:t,share:""};is(ps(e),`${wb(e,t)} chosen`,[...o.slice(0,n),i,...o.slice(n+1)],oe(e,`/fats/${n}/share`))}function vb(e){let{row:t,text:n,lit:o}=a.picking,i=ms(e).map(u=>u.fat),r=hS(e,n),l=r.filter(u=>!i.includes(u.id)||i[t]===u.id);return{found:r,free:l,lit:l.find(u=>u.id===o)}}function bb(e){let t=a.picking;if(!a.fats.length)return f({picking:{...t,is_entered:!0}});let{free:n,lit:o}=vb(e),i=n.find(l=>tt(l.name)===tt(t.text.trim())),r=o??(n.length===1?n[0]:i);r?pp(e,r.id):t.is_entered&&f({picking:{...t,is_entered:!1}})}function kb(e){let{row:t,text:n}=a.picking,o=ms(e).map(m=>m.fat),{found:i,free:r,lit:l}=vb(e),u=m=>{f({picking:{of:e,row:t,text:m.target.value}})},c=m=>{let _=l?r.indexOf(l)+m:m>0?0:r.length-1,b=r[(_+r.length)%r.length];b&&(f({picking:{of:e,row:t,text:n,lit:b.id}}),requestAnimationFrame(()=>document.getElementById(`fat-${b.id}`)?.scrollIntoView({block:"nearest"})))},p=m=>{m.key==="Escape"&&up(),(m.key==="ArrowDown"||m.key==="ArrowUp")&&(m.preventDefault(),c(m.key==="ArrowDown"?1:-1)),m.key==="Enter"&&bb(e)};return a.picking.is_entered&&a.fats.length&&queueMicrotask(()=>a.picking?.is_entered&&bb(e)),s`<div class="picker" role="group" aria-label="Which fat?">
    <div class="row">
      <div class="field">
        <label for="find-fat">Find a fat by its name</label>
        <input
          id="find-fat"
          role="combobox"
          aria-expanded="true"
          aria-controls="fats-found"
          aria-activedescendant=${l?`fat-${l.id}`:d}
          .value=${n}
          @input=${u}
          @keydown=${p}
          autocomplete="off"
          spellcheck="false"
        />
      </div>
      <button type="button" @click=${up}>Close the list</button>
    </div>
    <p class="hint" role="status">
      ${a.fats.length?i.length?`${i.length===1?"One fat: Enter takes it":`${i.length} fats: the arrow keys choose, Enter takes`}.`:"No fat of that name.":`The list of fats is on its way ...${a.picking.is_entered?" Then what you typed is taken.":""}`}
    </p>
    <div class="choice" id="fats-found" role="listbox" aria-label="Fats found">
      ${i.map(m=>{let _=o.includes(m.id)&&o[t]!==m.id,b=Hn(m,n);return s`<button
          type="button"
          role="option"
          id="fat-${m.id}"
          class=${m===l?"lit":""}
          ?disabled=${_}
          aria-selected=${m===l||o[t]===m.id?"true":"false"}
          @click=${()=>pp(e,m.id)}
        >
          ${m.name}${b===m.name||!b?"":`, ${b}`}${_?" (is in it)":""}
        </button>`})}
    </div>
    <p class="choice">
      <button type="button" @click=${()=>{gS(e,n)}}>
        ${n.trim()?`Describe "${n.trim()}" as a fat of my own`:"Describe a fat of my own"}
      </button>
    </p>
  </div>`}function hS(e,t){let n=go(e).filter(l=>Hn(l,t)!==void 0),o=t.split(/\s+/).filter(l=>l.length>2);if(n.length||o.length<2)return n;let i=l=>o.filter(u=>Hn(l,u)!==void 0).length,r=Math.max(...go(e).map(i));return r?go(e).filter(l=>i(l)===r):[]}async function gS(e,t){if(!await Oa(e))return;let o=t.trim(),i=ll(o,[...a.fats,...te("own_fats","/fats")]),r=te("own_fats","/fats").length;Z("own_fats",`/fats/${r}`,{...gl,id:i,name:o}),pp(e,i),Ge("own_fats",i),C(oe("own_fats",`/fats/${r}/${o?"inci":"name"}`))}function _S(e){let t=e.saponification_value,n=t,i=t===""||t!==null&&typeof t=="object"&&n.low===""?"to be filled in":t===void 0?"published values":t!==null&&typeof t=="object"?`${String(n.low)} to ${String(n.high)} mg KOH per g`:`${String(t)} mg KOH per g`;return`: ${e.lot?`${String(e.lot)}, `:""}${i}`}var $S=[["published","As published"],["one","One value, from the supplier"],["range","A range, from the supplier"]],bS={published:void 0,one:"",range:{low:"",typical:"",high:""}};function wS(e,t){let n=`/fats/${t}/saponification_value`,o=g(e,n),i=o===void 0?"published":o!==null&&typeof o=="object"?"range":"one",r=g(e,`/fats/${t}/confirmed`)!==void 0,l=(u,c)=>h({label:u,of:e,at:c,number:!0,short:!0});return s` ${h({label:"Lot",of:e,at:`/fats/${t}/lot`,optional:!0,short:!0})}
  ${A({of:e,question:"Saponification value, mg of KOH for 1 g of fat (ISO 3657)",at:n,is_told_elsewhere:i==="one",chosen:i,answers:$S,puts:u=>bS[u],hint:yS(e,O(e,`/fats/${t}/fat`))})}
  ${i==="one"?s`<div class="row">${l("Saponification value",n)}</div>`:d}
  ${i==="range"?s`<div class="row">
          ${l("Lowest",`${n}/low`)} ${l("Typical",`${n}/typical`)} ${l("Highest",`${n}/high`)}
        </div>`:d}
  ${i!=="published"||r?dp(e,`/fats/${t}/confirmed`,"Checked in the supplier's document, though what is known of the fat contradicts it"):d}`}function yS(e,t){let n=go(e).find(l=>l.id===t);if(!n)return;if("own"in n)return n.own?`In your file: ${n.own}.`:void 0;let{low:o,high:i,source:r}=n.saponification_value_mg_koh_per_g;return`Published: ${o} to ${i} (${r}).`}function vS(e){let t=Qr(e),n=Array.isArray(t)?`In it: ${t.map(i=>i.name).join(", ")}.`:t==="none"?"No such file is found from here.":void 0,o=O(e,"/own_fats");return M({of:e,name:"own fats",pointers:["/own_fats"],summary:`A file of your own fats${o&&`: ${o}`}`,body:()=>h({label:"Its name, as it lies beside this formula",of:e,at:"/own_fats",optional:!0,hint:n??"Such as studio.fats.json. Its fats then stand in the list of fats."})})}var kS=e=>ge.includes(e);function Al(){let e=a.complaint;return!e?.field||e.lye_heavy?!1:Ui().some(({of:t,at:n})=>Bt(t)&&(n===e.field||n.startsWith(`${e.field}/`)))}function fs(){let e=a.complaint?Ui():[];return e.length?s`<div class="needed">
    <p role="status"><strong>Still needed for the figures</strong>: ${e.length}</p>
    <ul class="choice">
      ${e.map(t=>s`<li>
            <button type="button" @click=${()=>xS(t)}>
              ${t.part?s`<small>${t.part}</small> `:d}${t.label}
            </button>
          </li>`)}
    </ul>
  </div>`:d}function xS({of:e,id:t,folds:n}){for(let o of n)ue(o);f({has_asked:!0}),kS(e)?(a.view!=="formula"||a.formula_of!==e)&&at(e):a.view!=="set-up"&&!(e==="own_fats"&&a.view==="formula")&&f({view:"set-up"}),requestAnimationFrame(()=>C(L(t)))}var xb="danger-of-superfat";function mp(e,t){return s`<section class="card" aria-labelledby="lye-title">
    <h2 id="lye-title">Superfat, alkali, water</h2>
    <div class="row">
      ${h({label:"Superfat (share of all fat left unsaponified)",of:e,at:"/superfat",unit:"%",term:"superfat",described_by:_o(e).length?xb:void 0})}
    </div>
    ${es(e,xb)} ${TS(e)} ${OS(e,t)}
  </section>`}function TS(e){let t=te(e,"/alkali"),n=t.length>1?"both":t[0]?.alkali;return s`${A({of:e,question:"Alkali",term:"alkali",at:"/alkali",chosen:n,answers:[["NaOH","NaOH, for bars"],["KOH","KOH, for soft soap"],["both","Both"]],puts:i=>RS(t,i),then:i=>i==="both"?"/alkali/0/share":"/alkali/0/purity"})}
  ${t.map((i,r)=>SS(e,i,r,t.length>1))}
  ${t.length>1?s`<p class="total" role="status">
          ${Gi("The two",t.map(i=>i.share))}
        </p>`:d}`}function RS(e,t){let n=(o,i)=>({purity:"",...e.find(r=>r.alkali===o),alkali:o,share:i});return t==="both"?[n("NaOH",""),n("KOH","")]:[n(t,"100 %")]}function SS(e,t,n,o){let i=`/alkali/${n}`,r=String(t.alkali??""),l=Me(e,i)??Me(e,`${i}/alkali`);return s`<div class="formula-row">
    ${l?s`<p class="complaint">${l}</p>`:d}
    <div class="row">
      ${o||t.share!=="100 %"?h({label:`${r}: share of the fats it saponifies`,of:e,at:`${i}/share`,unit:"%",hint:"Counted by saponification, not by the weight of the alkali."}):d}
      ${h({label:`${r}: purity`,of:e,at:`${i}/purity`,unit:"%",hint:"Pure alkali in what is weighed, from the supplier's document.",term:n===0?"purity":void 0})}
    </div>
    ${M({of:e,name:i,pointers:[`${i}/purity_range`],summary:`Guaranteed purity range${AS(t.purity_range)}`,body:()=>DS(e,i)})}
  </div>`}var AS=e=>Array.isArray(e)?`: ${e.map(String).join(" to ")}`:"";function DS(e,t){let n=`${t}/purity_range`,o=g(e,n)!==void 0;return s`${A({of:e,question:"Guaranteed range",at:n,chosen:o?"said":"none",answers:[["none","Not given"],["said","From ... to"]],puts:i=>i==="none"?void 0:["",""]})}
  ${o?s`<div class="row">
          ${h({label:"Lowest",of:e,at:`${n}/0`,unit:"%",short:!0})}
          ${h({label:"Highest",of:e,at:`${n}/1`,unit:"%",short:!0})}
        </div>`:d}`}var PS={lye_strength:"By the lye's strength",water_to_alkali:"By parts to the alkali",share_of_fats:"By the fats"};function OS(e,t){let n=Object.keys(g(e,"/water")??{}),o=n.length===1?n[0]:void 0,i=Object.entries(PS);return s`${A({of:e,question:"How is the water given?",at:"/water",chosen:o,answers:i,puts:r=>({[r]:""}),then:r=>`/water/${r}`,hint:FS(t)})}
    <div class="row">${n.map(r=>MS(e,r))}</div>`}function MS(e,t){let n=`/water/${t}`;return t==="water_to_alkali"?h({label:"Parts of water for 1 part of pure alkali",of:e,at:n,number:!0}):t==="lye_strength"?h({label:"Strength: pure alkali in alkali and water together",of:e,at:n,unit:"%"}):h({label:"Water, as a share of the fats",of:e,at:n,unit:"%"})}function FS(e){if(!(!e||a.is_old))return`It now makes a strength of ${S(e.lye_strength_percent,1)} %; ${S(e.water_to_pure_alkali,2)} parts to 1 of pure alkali; ${S(e.water_percent_of_fats,1)} % of the fats.`}function vo(e,t,n){let o=LS(e,t);return M({of:e,name:`${t} label`,pointers:["inci","allergens","document"].map(i=>`${t}/${i}`),summary:`For the label${o&&`: ${o}`}`,body:()=>s`${CS(e,`${t}/inci`,n)}
        <p class="question">Fragrance allergens in it</p>
        ${Tb(e,`${t}/allergens`,"Allergen","Add an allergen",(i,r)=>WS(e,i,r))}
        ${h({label:"Supplier's document, with its date",of:e,at:`${t}/document`,optional:!0})}`})}function LS(e,t){let n=te(e,`${t}/allergens`).length;return[g(e,`${t}/inci`)===void 0?"":"INCI given",n?`${n} ${n===1?"allergen":"allergens"}`:""].filter(Boolean).join(", ")}var fp={name:"",share:""},BS={unsaid:void 0,one:"",many:[fp]};function CS(e,t,n){let o=g(e,t),i=o===void 0?"unsaid":Array.isArray(o)?"many":"one",r=l=>l==="many"&&o?[{...fp,name:o}]:BS[l];return s`${A({of:e,question:`INCI of ${n}`,at:t,is_told_elsewhere:i!=="unsaid",chosen:i,answers:[["unsaid","Not given"],["one","One name"],["many","A composition"]],puts:r})}
  ${i==="one"?h({label:"INCI name",of:e,at:t}):d}
  ${i==="many"?s`<p class="hint">All that is in it, water too, until it adds to 100 %.</p>
          ${Tb(e,t,"INCI name","One more INCI name")}`:d}`}function WS(e,t,n){return A({of:e,question:`Allergen ${n+1}: on the EU's list?`,at:`${t}/listed`,chosen:g(e,`${t}/listed`)===!1?"other":"as_named",answers:[["as_named","Where its name stands there"],["other","No, another substance"]],puts:o=>o==="other"?!1:void 0})}function Tb(e,t,n,o,i){let r={of:e,at:t};return s`${k(r).map((l,u)=>s`<div class="row named" id=${E(r,u)}>
        ${h({label:`${n} ${u+1}`,of:e,at:`${t}/${u}/name`})}
        ${h({label:`Share ${u+1}`,of:e,at:`${t}/${u}/share`,unit:"%",short:!0})}
        ${i?.(`${t}/${u}`,u)??d} ${J(r,u,String(l.name||`${n} ${u+1}`))}
      </div>`)}
  ${ee(r,o,()=>U(r,fp,n))}`}var IS=[{list:"liquids",title:"Liquids in place of water",add:"Add a liquid",aside:"Milk, coconut milk, pur\xE9es, brine.",row:QS},{list:"additives",title:"Additives, salts and acids",add:"Add an additive",aside:"Whatever goes in beside fats, lye, fragrance and colour.",row:qS},{list:"fragrances",title:"Fragrances",add:"Add a fragrance",aside:"Essential and fragrance oils.",row:US},{list:"colours",title:"Colours",add:"Add a colour",aside:"Micas, pigments and other colours. Those of layers stand in the run.",row:zS}];function hp(e){return IS.map(t=>{let n={of:e,at:`/${t.list}`},o=k(n),i=(r,l)=>s`<li class="formula-row" id=${E(n,l)}>
        ${NS(e,t,n,r,l)} ${t.row(e,`${n.at}/${l}`,r)}
      </li>`;return s`<section class="card" aria-labelledby="${t.list}-title">
      <h2 id="${t.list}-title">${t.title}</h2>
      ${o.length?s`<ol class="formula-rows">
              ${o.map(i)}
            </ol>`:s`<p class="aside">${t.aside}</p>`}
      ${ee(n,t.add,()=>U(n,ES(t),t.add.replace("Add ","")))}
    </section>`})}function ES(e){return e.list==="liquids"?{name:"",goes_into:"",composition:""}:{name:"",rate:""}}function NS(e,t,n,o,i){let r=`/${t.list}/${i}`,l=Me(e,r),u=String(o.name||`number ${i+1} of the ${t.list}`);return s`${l?s`<p class="complaint">${l}</p>`:d}
    <div class="row named">
      ${h({label:"Name",of:e,at:`${r}/name`})}
      ${t.list==="liquids"?d:Sl(e,`${r}/rate`,"How much",Rl)}
      ${J(n,i,u)}
    </div>`}function Rb(e,t,n,o){let i=`${t}/goes_into`,r=g(e,i);return A({of:e,question:"Goes into",at:i,chosen:r||void 0,answers:n,puts:p=>p,hint:o||r?void 0:"The batter, unless you name another place.",optional:!o})}function Sb(e,t,n){let o=g(e,`${t}/stirred_in`);return s`${Rb(e,t,HS,n)}
  ${g(e,`${t}/goes_into`)==="lye"||o!==void 0?A({of:e,question:"Stirred into the lye",at:`${t}/stirred_in`,chosen:String(o??""),answers:jS,puts:i=>i||void 0,hint:o===void 0?"Before the alkali; sodium lactate once the lye has cooled.":void 0}):d}`}var jS=[["","As usual"],["before the alkali","Before the alkali"],["once the lye has cooled","Once the lye has cooled"]],HS=[["lye","The lye"],["fats","The fats"],["batter","The batter"]];function gp(e,t,n){let o=(l,u,c)=>l?`${u}${String(l)}${c}`:"",i=[o(n.bulk_density,""," in the spoon"),o(n.density,""," in the batter"),o(n.limit,"at most ","")].filter(Boolean).join(", "),r=["bulk_density","density","limit"].map(l=>`${t}/${l}`);return M({of:e,name:`${t} densities`,pointers:r,summary:`Densities and limit${i&&`: ${i}`}`,body:()=>s` <div class="row">
          ${h({label:"Bulk density (for spoons)",of:e,at:`${t}/bulk_density`,unit:"g/ml",optional:!0,hint:"A level cup weighed, by the cup's volume. Needed for spoons."})}
          ${h({label:"True density (in the batter)",of:e,at:`${t}/density`,unit:"g/ml",optional:!0,hint:"Once it is in the batter. Left out, water's is taken, and that is said."})}
        </div>
        ${Sl(e,`${t}/limit`,"The most that the supplier's document allows",$b,!0)}`})}function _p(e,t,n,o){let i=(l,u)=>l===void 0?"":l==="none"?`no ${u}`:u,r=[i(n.contains_fat,"fat"),o?i(n.contains_acid,"acid"):""].filter(Boolean).join(", ");return M({of:e,name:`${t} holds`,pointers:[`${t}/contains_fat`,`${t}/contains_acid`],summary:`${o?"Fat or acid":"Fat"} in it${r&&`: ${r}`}`,body:()=>s`${gb(e,t)} ${o?lp(e,t):d}`})}var Dl=(e,t,n)=>vo(e,t,String(n.name||"it"));function qS(e,t,n){return s`${Sb(e,t,!0)}
    <div class="folds">${_p(e,t,n,!0)} ${gp(e,t,n)} ${Dl(e,t,n)}</div>`}function Ab(e,t,n){return M({of:e,name:`${t} place`,pointers:[`${t}/goes_into`,`${t}/stirred_in`],summary:`Goes into the ${String(n.goes_into??"batter")}`,body:()=>Sb(e,t,!1)})}function US(e,t,n){return s`<div class="folds">
    ${gp(e,t,n)} ${Dl(e,t,n)} ${Ab(e,t,n)} ${_p(e,t,n,!1)}
  </div>`}function zS(e,t,n){return s`${JS(e,t)}
    <div class="folds">
      ${gp(e,t,n)} ${Dl(e,t,n)} ${Ab(e,t,n)} ${_p(e,t,n,!0)}
    </div>`}var KS=[["formula","taken out of the formula's"],["extra","put on top, and counted as fat"]];function JS(e,t){let n=`${t}/dispersed_in`,o=g(e,n)!==void 0,i=g(e,`${n}/from`);return s`${A({of:e,question:"Stirred into oil first",at:n,chosen:o?"oil":"dry",answers:[["dry","No"],["oil","Yes"]],puts:l=>l==="oil"?{fat:"",oil_per_colour:""}:void 0})}
  ${o?s`<div class="row">
            ${fe({label:"Which oil",of:e,at:`${n}/fat`,answers:Tl(e),unsaid:"choose ..."})}
            ${h({label:"Oil for 1 g of colour",of:e,at:`${n}/oil_per_colour`,number:!0,unit:"g",hint:"Or as you measure it: 1 tsp in 1 tbsp of oil."})}
          </div>
          ${A({of:e,question:"That oil is",at:`${n}/from`,chosen:i,answers:KS,puts:l=>l,optional:!0,hint:i?void 0:"Taken out of the formula's own, unless you say so."})}`:d}`}var VS=["coconut milk, canned","goat milk","cow's milk, whole","cream, heavy","milk, evaporated","carrot, pur\xE9ed raw","cucumber, pur\xE9ed with its skin","pumpkin, canned pur\xE9e","avocado, pur\xE9ed","brine, saturated at 20 \xB0C"];function QS(e,t,n){let o=(i,r,l)=>M({of:e,name:`${t}/${i}`,pointers:[`${t}/${i}`],summary:r,body:l});return s`${YS(e,t,n)}
    ${Rb(e,t,[["lye","The lye"],["batter","The batter"]],!0)}
    ${XS(e,t)}
    <div class="folds">
      ${o("frozen",n.frozen===!0?"Goes in as ice":"Frozen: no",()=>GS(e,`${t}/frozen`))}
      ${o("acid",`Acid in it${n.contains_acid===void 0?"":n.contains_acid==="none"?": none":": some"}`,()=>lp(e,t))}
      ${o("density",`Density${n.density?`: ${String(n.density)}`:""}`,()=>h({label:"Density",of:e,at:`${t}/density`,unit:"g/ml",optional:!0,hint:"Left out, it is worked out from what is in it."}))}
      ${Dl(e,t,n)}
    </div>`}function GS(e,t){let n=g(e,t)===!0?"ice":"liquid";return A({of:e,question:"Goes in as ice, which keeps the lye cooler",at:t,chosen:n,answers:[["liquid","No"],["ice","Yes"]],puts:i=>i==="ice"?!0:void 0})}function YS(e,t,n){let o=n.replaces!==void 0?"replaces":n.rate!==void 0?"rate":void 0,i=r=>({..._e(e,t,["replaces","rate"]),[r]:""});return s`${A({of:e,question:"How much",at:t,asked_at:`${t}/replaces`,is_told_elsewhere:o!==void 0,chosen:o,answers:ZS,puts:i})}
  ${o==="replaces"?s`<div class="row">
          ${h({label:"Of the formula's water",of:e,at:`${t}/replaces`,unit:"% of water",hint:"Its own water stands in for that share."})}
        </div>`:d}
  ${o==="rate"?Sl(e,`${t}/rate`,"Rate",Rl):d}`}var ZS=[["replaces","In place of so much water"],["rate","By the fats or the batter"]];function XS(e,t){let n=`${t}/composition`,o=typeof g(e,n)=="object",i={water:"",sugar:"",salt:"",source:""},r=(u,c)=>h({label:u,of:e,at:`${n}/${c}`,unit:"%",short:!0});return s`${A({of:e,question:"What 100 g of it holds",at:n,is_told_elsewhere:!o,chosen:o?"label":"shipped",answers:[["shipped","Built-in figures"],["label","The label's figures"]],puts:u=>u==="label"?i:""})}
  ${o?s`<div class="row">${r("Water","water")} ${r("Sugar","sugar")} ${r("Salt","salt")}</div>
          ${ap(e,`${n}/fat`,[["none","None"],["some","Holds fat"]],[["milk_fat","Milk fat"],...Tl(e)])}
          <div class="row">
            ${h({label:"Where the figures are from",of:e,at:`${n}/source`,hint:"Such as: the tin's label."})}
          </div>`:s`<div class="row">
          ${fe({label:"Built-in figures of",of:e,at:n,answers:VS.map(u=>[u,u]),unsaid:"choose ..."})}
        </div>`}`}var hs=()=>Object.keys(g("studio","/cups")??{}),gs=()=>hs().length===1?{net:""}:hs().length?{cup:"",net:""}:{holds:"",net:""},Db="\0another";function _s(e,t="Cup holds"){let n=`${e}/holds`,o=hs();if(g("run",n)!==void 0||!o.length)return s`${h({label:t,at:n,unit:"ml",short:!0})}${o.length?e1(e):d}`;let i=l=>l===Db?q("run","Another cup",e,{...$p(e),holds:""},oe("run",n)):q("run",`Cup: ${l}`,e,{...$p(e),cup:l}),r=l=>O("studio",`/cups/${j(l)}`);return fe({label:"Which cup",at:`${e}/cup`,answers:[...o.map(l=>[l,`${l}, ${r(l)}`]),[Db,"Another cup"]],unsaid:"choose ...",chosen:O("run",`${e}/cup`)||(o.length===1?o[0]:""),take:i})}function $p(e){let{cup:t,holds:n,...o}=g("run",e)??{};return o}var e1=e=>s`<button type="button" @click=${()=>q("run","A cup of the studio",e,$p(e))}>
    A cup of my studio
  </button>`;function Ob(){return le()?s`<div class="row">
    ${hs().map(e=>h({of:"studio",label:`${e} holds`,at:`/cups/${j(e)}`,unit:"ml",short:!0,optional:!0}))}
    ${t1()}
  </div>`:s`<p class="hint">Each reading says what its cup holds, as long as there is no studio.</p>`}function t1(){let e=()=>{let t=document.getElementById("new-cup"),n=t.value.trim()||Pb();t.value="",q("studio",`${n} added`,`/cups/${j(n)}`,"",oe("studio",`/cups/${j(n)}`))};return s`<div class="field short">
      <label for="new-cup">Another weigh-cup, its name</label>
      <input id="new-cup" autocomplete="off" spellcheck="false" placeholder=${Pb()} />
    </div>
    <button type="button" @click=${e}>Add the cup</button>`}function Pb(){for(let e=1;;++e){let t=e===1?"weigh-cup":`weigh-cup ${e}`;if(!hs().includes(t))return t}}var n1=["ice bath","cold water","fridge","room"].map(e=>[e,e==="room"?"the room":e]),bp=e=>({run:`/${e}/temperatures`,studio:`/temperatures/${e}`});function Pl(e){let{run:t}=bp(e);return M({name:t,pointers:[t],summary:"How warm",body:()=>s` <p class="hint">
          ${le()?"Your studio says what is usual. ":""}What you leave blank is left out.
        </p>
        ${yo("How warm",[bp(e)])} ${W("run",t)} ${o1(e)}`})}function o1(e){let{run:t,studio:n}=bp(e),o=u=>({run:`${t}/${u}`,studio:`${n}/${u}`}),i=a.units==="us"?"\xB0F":"\xB0C",r=(u,c,p=i)=>qe(o(u),{label:c,unit:p,optional:!0,takes_part:!0,short:!0}),l=o("cooled_in");return s`<div class="row">
    ${r("room_at","Room and dry alkali")} ${r("water_at","Water")}
    ${r("ice_share","Of the water, as ice","%")} ${r("lye_used_at","Lye when it is used")}
    ${r("fats_at","Fats")} ${r("batter_below","Batter must stay below")}
    ${fe({label:"The lye cools in",...ss(l),answers:n1,unsaid:"not given",optional:!0})}
  </div>`}var yt=()=>$(a.run.now,"/pipe")!==void 0;function Mb(){let e=t=>{let n=F(t,"/pipe",{formula:"",fills_headspace:"",whip:gs()});return le()?n:F(n,"/losses/pipe",{bag:"",bowl_and_whisk:""})};ue("set-up pipe"),wt("run","Topping added",e,L("lane-pipe"))}function i1(e){let t=Object.keys($(e,"/batch")??{}).length===1;return["/pipe","/losses/pipe","/lye_pot",$(e,"/batch/whippings")!==void 0&&t?"/batch":"/batch/whippings"].reduce((o,i)=>$(o,i)===void 0?o:F(o,i,void 0),e)}function r1(){wt("run","Topping removed",i1,L("topping-back"))}function Fb(){let e=a.past.at(-1)?.run?.now;return!e||$(e,"/pipe")===void 0||yt()?d:s`<button type="button" id="topping-back" @click=${Er}>Bring the topping back</button>`}function wp(){return s`${m1()} ${Pl("pipe")}
    <p class="choice"><button type="button" @click=${r1}>Take the topping away</button></p>`}var s1=["trials","beads","envelope"];function yp(e){return s1.every(t=>g("run",`/pipe/${t}`)===void 0)&&bt("run","/pipe",`${Y("run","/pipe/trials")}-add`,"How large the topping is"),s`<h3>How large is the topping?</h3>
    ${W("run","/pipe")}
    <p class="hint">
      Weighed trials are used first, then beads, then the outline; the others are shown for comparison.
    </p>
    <div class="items">
      ${ot({at:"/pipe/trials",name:"the trials",title:"Trials piped on paper",add:"Weigh trials piped on paper",blank:{weighed:[""],weigh_cup:gs()},body:a1})}
      ${ot({at:"/pipe/envelope",name:"the outline",title:"Its outline",add:"Measure its outline",blank:{form:"",diameter:"",height:"",soap_share:""},body:d1})}
    </div>
    ${ot({at:"/pipe/beads",name:"the beads",title:"Beads from a tip",add:"Calculate it from the tip and its moves",blank:N$,body:()=>j$(e)})}
    ${e?c1(e):d}`}function a1(){let e={at:"/pipe/trials/weighed",least:1};return s`<div class="trials">
      ${k(e).map((t,n)=>s`<div class="row" id=${E(e,n)}>
            ${h({label:`Trial ${n+1}`,at:`${e.at}/${n}`,unit:"g",short:!0})}
            ${J(e,n,`trial ${n+1}`)}
          </div>`)}
    </div>
    ${ee(e,"One more trial",()=>U(e,"","trial"))}
    <div class="row">
      ${h({label:"Weigh-cup of the trials, net",at:"/pipe/trials/weigh_cup/net",unit:"g"})}
      ${_s("/pipe/trials/weigh_cup")}
    </div>
    ${W("run","/pipe/trials/weigh_cup")} ${l1()}`}var l1=()=>s`<div class="row">
    ${h({label:"Volume of one, where you know it better",at:"/pipe/trials/volume_each",unit:"ml",optional:!0,hint:"Above its foot, as your batches tell it. It is used in place of the trials; empty it to go by them again."})}
  </div>`;function d1(){let e="/pipe/envelope",t=g("run",`${e}/form`);return s`${A({question:"Form of the outline",at:`${e}/form`,chosen:t,answers:[["cone","Cone"],["dome","Dome"]],puts:n=>n})}
    <div class="row">
      ${h({label:"Diameter",at:`${e}/diameter`,unit:"mm",short:!0})}
      ${h({label:"Height",at:`${e}/height`,unit:"mm",short:!0})}
      ${h({label:"Share that is soap, not air",at:`${e}/soap_share`,unit:"%",short:!0,hint:"Topping, not air between its ridges."})}
    </div>`}var u1={given:"As you know it",trials:"By weighed trials",beads:"By beads",envelope:"By its outline"};function c1(e){let t=e.visible_by;if(!t)return d;let n=["given","trials","beads","envelope"].map(i=>({way:i,ml:t[`${i}_ml`]})).filter(i=>typeof i.ml=="number"),o=i=>n.length<2?void 0:i===0?"this one counts":"for comparison";return s`<h4>${n.length<2?"Visible topping":"The ways compared, visible shape alone"}</h4>
    ${n.map(({way:i,ml:r},l)=>I({key:`pipe.by.${i}`,label:u1[i],note:o(l),shown:ke(a.units,r),of:`pipe.visible_by.${i}_ml`}))}
    ${p1(e)}`}function p1(e){let t=e.visible_by?.suggested_correction;if(!t||a.is_old)return d;let n=S(t.correction,2),o="/pipe/beads/tip/hand",i=typeof g("run","/pipe/beads/tip")=="object",r=i&&$(a.run.now,`${o}/correction`)!==t.correction,l=()=>q("run","correction kept",o,{correction:t.correction,trials:t.trials});return s`<p>
      Your hand lays down ${n} times the computed beads (${t.trials}
      ${t.trials===1?"trial":"trials"}): keep that as the tip's hand
      factor${i?"":", in your file of tips or by measuring the tip as your own"}.
    </p>
    ${r?s`<button type="button" @click=${l}>Keep ${n} for my tip</button>`:d}`}function vp(e){return s`<h3>The whip planned for</h3>
    <div class="row">
      ${h({label:"Weigh-cup, net",at:"/pipe/whip/net",unit:"g",term:"weigh_cup"})}
      ${_s("/pipe/whip")}
    </div>
    ${W("run","/pipe/whip")}
    ${e?.loads?s`<p class="aside of-plan">${e.loads} bag loads.</p>`:d}`}function m1(){let e="/pipe/pace",t=(n,o,i,r=!1)=>h({label:n,at:`${e}/${o}`,unit:i,optional:r,short:!0});return M({name:"pace",pointers:[e],summary:"Piping speed",body:()=>ot({at:e,name:"the pace",title:"The pace",add:"Add your piping speed",blank:{open_time:"",time_per_piece:""},body:()=>s`<div class="row">
            ${t("Can be piped for","open_time","min")} ${t("To pipe one","time_per_piece","s")}
            ${t("To change the bag","time_per_bag_change","s",!0)}
          </div>`})})}function f1(e,{at:t,figure:n}){let o=$(e,t),i=Array.isArray(o)?o:typeof o=="string"?[o]:[];return i.length?[...i,n]:n}function $s(e,t,n){return t?s`<button type="button" @click=${()=>n(t.at,f1(e,t))}>It is really so: keep it</button>`:d}var kp=(e,t)=>e!==void 0&&e.length===t.length&&e.every((n,o)=>n===t[o]),Ol;function Lb(e){mo();let{plan:t,run:n,record:o,is_old:i}=a,r=[e,n.file,t,o.version];return Cb(r,!i&&t!==void 0,{mould:e,batches_of:n.file,below_brim_mm:t?.pour.below_brim_mm})}var Bb=(e,t)=>Cb([e,t],t!==void 0,{mould:e,batches_of:"studio.json"});function Cb(e,t,n){return kp(a.ways.of,e)?a.ways:(t&&!kp(Ol,e)&&h1(e,n),{})}async function h1(e,{mould:t,batches_of:n,below_brim_mm:o}){Ol=e;let i=o===void 0?{}:{"below-brim":`${o} mm`},r=await g1({file:t,"batches-of":n,...i});kp(Ol,e)&&f({ways:{of:e,...r}}),Ol=void 0}async function g1(e){try{return{ways:(await ln(e)).ways}}catch(t){if(!(t instanceof w))throw t;return{failed:B(t.complaint)}}}var Tp=500,_1=()=>$(a.run.now,"/cut")===void 0&&$1()>=Tp,$1=()=>a.plan?.pour.brimful_ml??a.measured?.gauge.pockets[0]?.brimful_ml??0,Ml={run:"/cut/kerf",studio:"/kerf"};function Wb(e){ue("set-up cut"),q("run","Cut","/cut",{bar:xp[e],...le()?{}:{kerf:""}},oe("run",`/cut/bar/${Object.keys(xp[e])[0]}`))}function b1(){q("run","Left whole","/cut",void 0,L("cut-into-bars"))}function Ib(){return _1()?s`<button type="button" id="cut-into-bars" @click=${()=>Wb("loaf")}>Cut it into slices</button>
    <button type="button" @click=${()=>Wb("slab")}>Cut it into bars</button>`:d}var xp={loaf:{thickness:""},slab:{length:"",width:""}};function w1(){let e=g("run","/cut/bar")??{};return"thickness"in e?"loaf":"length"in e||"width"in e?"slab":void 0}var y1={loaf:[["","Along the longer side"],["x","Along x, across the drawing"],["y","Along y, away from you"],["z","Upwards: rounds off a column"]],slab:[["","Whichever gives more bars"],["x","Along x, across the drawing"],["y","Along y, away from you"]]};function Eb(){let e=w1(),t=(o,i)=>h({label:o,at:`/cut/${i}`,unit:"mm",short:!0,optional:!0}),n=O("run","/cut/along");return s` ${A({question:"What is cut?",at:"/cut/bar",chosen:e,answers:[["loaf","A loaf, into slices"],["slab","A slab, into bars"]],puts:o=>xp[o]})}
    <div class="row">
      ${e==="loaf"?h({label:"Bar, thickness",at:"/cut/bar/thickness",unit:"mm",short:!0}):d}
      ${e==="slab"?["length","width"].map(o=>h({label:`Bar, ${o}`,at:`/cut/bar/${o}`,unit:"mm",short:!0})):d}
      ${qe(Ml,{label:"Kerf of each cut",unit:"mm",short:!0,term:"kerf"})}
      ${t("Off each end","end_trim")} ${t("Off each side","side_trim")}
      ${t("Planed off the top","top_planing")}
      ${t(e==="slab"?"Planed off each side of a bar":"Planed off both faces","face_planing")}
    </div>
    <p class="hint">The kerf of a wire is 0 mm. ${yo("Kerf",[Ml])}</p>
    ${e?A({question:e==="loaf"?"Slices are cut along":"Bars lie along",at:"/cut/along",chosen:n,answers:y1[e],puts:o=>o||void 0}):d}
    <button type="button" @click=${b1}>Leave it whole</button>`}var Fl=e=>/^\s*0*[1-9]\d{0,8}\s*$/.test(e)?Number(e):void 0;function Ll(e,t,n){return s`<div class="field short">
    <label for=${e} data-said="required">Pieces to sell</label>
    <input
      id=${e}
      aria-required="true"
      .value=${P(t)}
      @input=${o=>n(o.target.value)}
      autocomplete="off"
      spellcheck="false"
      inputmode="numeric"
    />
  </div>`}var Bl=e=>x(ke(a.units,e)),v1=e=>e.charAt(0).toUpperCase()+e.slice(1);function Cl({ways:e,failed:t}){return t!==void 0?s`<p class="hint">How the ways of measuring compare is not known: ${t}.</p>`:e?.ways.length?s`<section class="ways" aria-labelledby="ways-title">
    <h3 id="ways-title">What one cavity holds, by each way</h3>
    <p>${e.used_because}</p>
    <ul class="each-way">
      ${e.ways.map(n=>k1(n,e))}
    </ul>
    ${T1(e)} ${e.remarks.map(n=>s`<p class="aside">${n}</p>`)}
  </section>`:d}function k1(e,{below_brim_mm:t}){let{by:n,brimful_ml:o,at_line_ml:i,low_ml:r,high_ml:l,rests_on:u,used:c}=e;return s`<li data-by=${n} class=${c?"is-used":""}>
    <p class="way-name">
      <b>By ${n}</b> ${c?s`<span>✓ the plan uses it</span>`:s`<span>${x1(e)}</span>`}
    </p>
    ${i===null?d:s`<p>to the pour line <b class="at-line">${Bl(i)}</b></p>`}
    <p>to the brim <b class="brimful">${Bl(o)}</b></p>
    <p>
      ${r===null||l===null?d:s`between ${Bl(r)} and ${Bl(l)}${t===null?"":" to the line"}: `}${r===null?v1(u):u}
    </p>
  </li>`}function x1({differs_percent:e}){let t=Ve(Math.abs(e),1);return t==="0.0"?"the same":`${t} % ${e>0?"more":"less"}`}var T1=({below_brim_mm:e,line_of:t})=>e===null?d:s`<p class="aside">
        The pour line is ${x($e(a.units,e))} below the
        brim${t==="as asked"?"":`, ${t}`}.
      </p>`;function R1({outline:e,above:t}){let n=Math.max(4,(e.right-e.left)*.06),o=t.flat().map(([,m])=>m),[i,r]=o.length?[Math.min(...o),Math.max(...o)]:[0,0],l=-e.brim-2*n+i,u=l-r-n,c=[e.left-n,u,e.right-e.left+2*n,-e.floor+n-u],p=(m,_)=>R`<path class="shaded pour" fill-rule="evenodd" d=${_} /><path class="wall ${m}" fill-rule="evenodd" d=${_} />`;return s`<div class="drawing tall">
    <svg
      viewBox=${c.join(" ")}
      role="img"
      aria-label="The cavity from above and, beneath it, cut through its middle and seen from the side, to one scale"
    >
      ${p("above",Hr(t,l))}${p("side",Hr(e.loops))}
    </svg>
  </div>`}function Yi(e,t=!1,n=[]){let o=n.length?s`<p class="hint" role="status">Still needed: ${n.join(", ")}.</p>`:d;if(!e)return s`<p class="hint">The drawing and the volume stand here as soon as every measure is in.</p>
      ${o}`;let{gauge:i}=e,r=i.pockets[0];return s`${R1(e)}
    <p class="order ${t?"old":""}" role="status">
      Holds
      <b>${x(ke(a.units,r.brimful_ml))}</b>${i.pockets.length>1?s` in each of ${i.pockets.length}, ${x(ke(a.units,i.total_ml))} together`:d},
      ${x($e(a.units,r.brim_mm-r.floor_mm))} deep.
    </p>
    ${o}
    ${(i.measurements?.length??0)>1?s`<p class="aside">
            ${i.measurements.map(l=>`By ${l.by} ${x(ke(a.units,l.brimful_ml))}`).join("; ")}.
          </p>`:d}
    ${i.notes.length?s`<ul class="limits">
            ${i.notes.map(l=>s`<li>${l.text}</li>`)}
          </ul>`:d}`}var S1={mm:"in",g:"oz","\xB0C":"\xB0F"},A1={mm:/^(mm|cm|m|in|inch|inches|ft|"|″|”)$/,g:/^(mg|g|kg|oz|lb|lbs)$/,"\xB0C":/^(°?C|°?F)$/,"\xB0":/^(°|deg|degrees?)$/,h:/^(min|h|hours?|d|days?)$/};function Wl(e,t,n=""){let o=Rp(e);if(o)return o.unit??"";let i=Ft($(K(),e));return A1[t]?.test(i)?i:n||(a.units==="us"?S1[t]??t:t)}var Il=()=>f({typed:void 0}),Zi=e=>`d${e.replaceAll("/","-")}`,Rp=e=>a.typed?.key===Zi(e)?a.typed:void 0,El=e=>Rp(e)?.text??String($(K(),e)??"");function ko(e){let{complaint:t}=ie();return t&&(t.field===e||t.field.startsWith(`${e}/`))?t.line:void 0}function Sp(e,t,n,o){let{pointer:i}=e,r=l=>{let u=l.target.value,c=e.unit?Wl(i,e.unit,e.unit_before):"";f({typed:{key:Zi(i),text:u,unit:c}}),Ce(i,D1(e,u,c))};return s`<input
    id=${Zi(i)}
    .value=${P(El(i))}
    @input=${r}
    @blur=${Il}
    @keydown=${n??d}
    autocomplete="off"
    spellcheck="false"
    inputmode=${e.count?"numeric":"text"}
    aria-label=${o??d}
    aria-describedby=${t??d}
    aria-invalid=${ko(i)?"true":"false"}
  />`}function D1(e,t,n){if(!((e.optional||e.count)&&!t.trim()))return e.count&&/^\s*\d{1,6}\s*$/.test(t)?Number(t):n&&Oe(t)?`${t.trim()} ${n}`:t}function vt(e,t){let n=Zi(e.pointer),o=ko(e.pointer),i=P1(e.pointer)??e.hint,r=e.unit?` (${Wl(e.pointer,e.unit,e.unit_before)})`:"";return s`<div class="field ${e.wide?"wide":"short"} ${o?"wants":""}">
    <label for=${n}>${e.label}${r}</label> ${Sp(e,o||i?`${n}-said`:void 0,t)}
    ${be(n,o,i)}
  </div>`}function P1(e){let t=$(K(),e),n=Rp(e);if(!(!n?.text.includes("/")||typeof t!="string"||t===n.text))return`taken as ${t}`}function Nl(e){let t=e.toLowerCase(),{file:n,shipped:o}=ie().open,i=o?"":n;return a.files?.moulds.find(r=>r.file!==i&&r.name.trim().toLowerCase()===t)?.file}async function bs(e){let{open:t}=ie();try{if(await cn(t),t.theirs)return void requestAnimationFrame(()=>window.scrollTo(0,0));f({files:await ea()})}catch(n){if(!(n instanceof w))throw n;return Mc(n)}a.run.file&&(Jt(),se()),e(t.file)}var Kn="/shape/points",Nb=500,xo=(e,t)=>[Kn,e,...t?[t]:[]].join("/"),jb=e=>Array.from({length:e.least},()=>({}));function Hb(e){let t=pt(K(),Kn),n=M1(),{complaint:o}=ie(),i=o?.field===Kn&&!o.about?o.line:void 0;return s`<h3 id="points-title">Points</h3>
    <p class="hint">${e.words}</p>
    <div class="points" role="group" aria-labelledby="points-title">
      <div class="point head" aria-hidden="true">
        <span></span>${e.columns.map(r=>s`<span
              >${r.label} (${Wl(xo(-1,r.name),r.unit,qb(e,t.length,r.name))})</span
            >`)}
      </div>
      ${t.map((r,l)=>O1(e,l,n))}
    </div>
    ${i?s`<p class="complaint">${i}</p>`:d}
    <button type="button" ?disabled=${t.length>=Nb} @click=${()=>Hl(e,t.length)}>Add a point</button>
    <p class="hint">
      Enter goes on, and adds a point after the last; Shift with Enter puts one in between; Backspace in an empty one
      takes it away.
    </p>`}function O1(e,t,n){let o=n.has(t)?`point ${n.get(t)}`:"empty point",i=F1(t),r=l=>{let{name:u,label:c,unit:p}=e.columns[l],m={label:c,pointer:xo(t,u),unit:p,unit_before:qb(e,t,u)},_=`${c}, ${n.has(t)?o:`point ${t+1}`}`;return Sp(m,i?`point-${t}-said`:void 0,L1(e,t,l),_)};return s`<div class="point ${i?"wants":""}">
    <span class="number">${n.get(t)??""}</span>${r(0)}${r(1)}
    <button type="button" tabindex="-1" aria-label="Put a point before ${o}" @click=${()=>Hl(e,t)}>
      +
    </button>
    <button type="button" tabindex="-1" aria-label="Take ${o} away" @click=${()=>Ub(e,t)}>×</button>
    ${i?s`<p id="point-${t}-said" class="complaint">${i}</p>`:d}
  </div>`}function M1(){let e=[...Ar(K()),...fa(K())].sort((t,n)=>t-n);return new Map(e.map((t,n)=>[t,n+1]))}function F1(e){let{complaint:t}=ie();return ko(xo(e))??(t?.about===xo(e)?t.line:void 0)}function qb(e,t,n){let o=(i,r)=>Ft($(K(),xo(i,r)));for(let i=t-1;i>=0;--i)if(o(i,n))return o(i,n);return e.columns.map(({name:i})=>o(t,i)).find(Boolean)??""}function jl(e,t){queueMicrotask(()=>document.getElementById(Zi(xo(e,t)))?.focus())}function Hl(e,t){let n=[...pt(K(),Kn)];n.length>=Nb||(n.splice(t,0,{}),Il(),Ce(Kn,n),jl(t,e.columns[0].name))}function Ub(e,t,n=0){let o=pt(K(),Kn).filter((i,r)=>r!==t);Il(),Ce(Kn,o.length?o:[{}]),jl(Math.max(0,Math.min(t-(n?1:0),o.length-1)),e.columns[n].name)}function L1(e,t,n){let[o,i]=e.columns.map(({name:r})=>r);return r=>{let l=!El(xo(t,o))&&!El(xo(t,i));if(r.key==="Enter"&&r.shiftKey)Hl(e,t+1);else if(r.key==="Enter"&&n===0)jl(t,i);else if(r.key==="Enter"&&t+1<pt(K(),Kn).length)jl(t+1,o);else if(r.key==="Enter")Hl(e,t+1);else if(r.key==="Backspace"&&l&&pt(K(),Kn).length>1)Ub(e,t,t>0?1:0);else return;r.preventDefault()}}var Ap={weighings:[""]},Dp=/\.(3mf|gltf|glb)$/i;function ql(e){let t=Yn(e);return t?{kind:e,points:jb(t)}:{kind:e}}var B1=()=>Ce("/water",Ap),xn=e=>jt(K(),e),ws=()=>Sr(K());function zb(e){let{open:t,answer:n,is_old:o}=ie();return s`${yn(t,()=>{bs(e)})} ${vn(t)}
    ${t.shipped?d:Qi(a.files?.moulds.find(i=>i.file===t.file))}
    ${xn("shape")&&xn("mesh")?s`<p class="hint">The mesh is measured; its measures are a check.</p>`:d}
    ${xn("shape")?ce("Shape",ws(),Object.entries(Mh),C1):d}
    <div class="beside ${Yn(ws())?"rows":""}">
      <div>
        ${Pp()} ${xn("shape")?I1():d} ${xn("mesh")?E1():d}
        ${Op()} ${xn("water")?j1():d} ${q1()}
      </div>
      <div class="stays">${Yi(n,o,Jb())} ${U1(e)}</div>
    </div>`}function C1(e){let t={...ie().shapes,[ws()]:K().shape};v(ie(),{shapes:t,answer:void 0}),Ce("/shape",t[e]??ql(e))}function W1(){let{shipped:e,file:t}=ie().open;return e?a.files?.moulds.find(n=>n.file===t)?.name??t:void 0}function Pp(){let e=W1();return vt({label:"What you call it",pointer:"/name",wide:!0,hint:e?`${e} stays as it is in the catalogue; this becomes a mould of your own, under a name of its own.`:void 0})}function I1(){let e=ws(),t=Yn(e);return s`${yi(e).length?s`<div class="row">
          ${yi(e).map(n=>vt({...n,pointer:`/shape/${n.name}`}))}
        </div>`:d}
  ${t?Hb(t):d}`}function Op(e=pu(K())){return s`<div class="row">
      ${e?d:vt({label:"Cavities in one mould",pointer:"/cavities",count:!0})}
      ${vt({label:"Moulds you own",pointer:"/owned",count:!0,optional:!0})}
      ${vt({label:"Unmould after",pointer:"/unmould_after",unit:"h",optional:!0})}
    </div>
    ${vt({label:"Note",pointer:"/note",optional:!0,wide:!0})}`}var Mp=[["cavity","What is filled, or the piece"],["body","The mould with its pockets"],["skin","The mould's inner surface"]],Fp=[["","As it is"],["+z","+z"],["+y","+y"],["-z","-z"],["-y","-y"],["+x","+x"],["-x","-x"]];function E1(){let e=o=>String($(K(),`/mesh/${o}`)??""),t=(o,i,r)=>{let l=ko(`/mesh/${i}`);return s`<h4>${o}</h4>
      ${ce(o,e(i),r,u=>Ce(`/mesh/${i}`,u||void 0))}
      ${l?s`<p class="complaint">${l}</p>`:d}`},n=ko("/mesh/file");return s`<h3>Its mesh <small>${e("file")}</small></h3>
    ${n?s`<p class="complaint">${n}</p>`:d}
    ${Dp.test(e("file"))&&!e("unit")?d:t("Unit of the file's numbers","unit",["mm","cm","m","in"].map(o=>[o,o]))}
    ${t("What it shows","role",Mp)} ${t("Which way is up","up",Fp)}
    ${e("role")==="body"?N1():d}
    <div class="row">
      ${vt({label:"Hollows to fill, by number",pointer:"/mesh/cavity_size_number",count:!0,optional:!0,hint:"Only where they differ in size."})}
      ${vt({label:"Direction that points up, if the mesh is tilted",pointer:"/mesh/straight_up",optional:!0,hint:"x,y,z, such as 0.0523,0,0.9986"})}
    </div>`}function N1(){let e=$(K(),"/mesh/on_board")===!0?"yes":"no";return s`<h4>Open below, and stood on a board?</h4>
    ${ce("Stood on a board",e,[["no","No"],["yes","Yes, the board closes it"]],t=>Ce("/mesh/on_board",t==="yes"?!0:void 0))}`}function j1(){let e=$(K(),"/water/filled_to"),t=e===void 0?void 0:e==="brim"?"brim":$(e,"/depth")!==void 0?"depth":"below_brim",n=r=>Ce("/water/filled_to",r==="brim"?"brim":{[r]:""}),o=$(K(),"/water/weighed_in"),i=t===void 0||t==="brim"?ko("/water/filled_to"):void 0;return s`<h3>Water weighed in it</h3>
    <p class="hint">
      The water alone, without the mould. It corrects the measures and cannot stand without them: it does not tell what
      a cavity holds to a pour line.
    </p>
    ${vt({label:"Temperature of the water",pointer:"/water/temperature",unit:"\xB0C"})}
    <h4>Filled to</h4>
    ${ce("Filled to",t,[["brim","The brim"],["depth","A depth"],["below_brim","Below the brim"]],n)}
    ${i?s`<p class="complaint">${i}</p>`:d}
    ${t==="depth"?vt({label:"Depth of the water",pointer:"/water/filled_to/depth",unit:"mm"}):d}
    ${t==="below_brim"?vt({label:"Water below the brim",pointer:"/water/filled_to/below_brim",unit:"mm"}):d}
    <h4>Weighed in</h4>
    ${ce("Weighed in",o===void 0?void 0:String(o),[["each cavity","One cavity"],["all cavities","The whole mould"]],r=>Ce("/water/weighed_in",r))}
    <div class="row">
      ${pt(K(),"/water/weighings").map((r,l)=>vt({label:`Water, round ${l+1}`,pointer:`/water/weighings/${l}`,unit:"g"},H1(l)))}
    </div>
    ${ie().complaint?.field==="/water/weighings"?s`<p class="complaint">${ie().complaint.line}</p>`:d}
    <button type="button" @click=${Kb}>One more round</button>`}function Kb(){let e=pt(K(),"/water/weighings").length;Ce(`/water/weighings/${e}`,""),queueMicrotask(()=>document.getElementById(`d-water-weighings-${e}`)?.focus())}var H1=e=>t=>{t.key==="Enter"&&(e+1===pt(K(),"/water/weighings").length?Kb():document.getElementById(`d-water-weighings-${e+1}`)?.focus())};function q1(){let e=(t,n)=>s`<button type="button" @click=${n}>${t}</button>`;return s`<div class="choice">
    ${xn("shape")?d:e("Add measures, as a check",()=>Ce("/shape",ql("block")))}
    ${xn("shape")&&xn("mesh")?e("Leave the measures out",()=>Ce("/shape",void 0)):d}
    ${xn("water")?e("Leave the water out",()=>Ce("/water",void 0)):e("Add weighed water",B1)}
  </div>`}function Jb(){let e=fa(K()).length;return e?[...Dr(K()),e===1?"the other number of a point":`the other numbers of ${e} points`]:Dr(K())}function U1(e){let t=String(K().name??"").trim(),n=Nl(t),{open:o,answer:i,is_old:r,complaint:l}=ie(),u=i&&!r&&!l&&!Jb().length&&t&&!n,c=o.shipped?"":o.file;return s`<button type="button" class="strong" ?disabled=${!u} @click=${()=>{bs(e)}}>
      ${c?"Save the change":"Use this mould"}
    </button>
    ${c?s`<p class="aside">It stays in ${c}.</p>`:d}
    ${t?d:s`<p class="hint">Give it a name first.</p>`} ${Lp(t,n)}
    ${l?s`<p class="alarm" role="status">${z1(l.field)}${l.line}</p>
            ${$s(K(),l.keep,Ce)}`:d}`}var Lp=(e,t)=>t?s`<p class="complaint" role="status">
        Another mould is called ${e} already (${t}); give this one a name of its own.
      </p>`:d;function z1(e){let[,t]=/^\/shape\/points\/(\d+)/.exec(e)??[];if(t)return`Point ${Number(t)+1}: `;if(e==="/shape/points")return"";let n=yi(ws()).find(({name:r})=>e===`/shape/${r}`);if(n)return`${n.label}: `;let i=document.getElementById(`d${e.replaceAll("/","-")}`)?.labels?.[0]?.textContent?.trim();return i?`${i}: `:e?`${e.slice(1).replaceAll("/",", ").replaceAll("_"," ")}: `:""}var K1=200*2**20;async function Vb(e){if(!e)return;let t={name:e.name,share:0,sizes:[],is_measuring:!1,questions:0};if(f({mesh:t}),Ce("/name",e.name.replace(/\.\w+$/,"")),e.size>K1){let n=`${e.name} has ${Math.ceil(e.size/1048576)} MiB`;return v(t,{complaint:`${n}; 200 MiB is the most: export it with fewer facets`})}try{let n=await Jf(e,o=>v(t,{share:o}));v(t,{share:1,upload:n.file}),await Gb(t)}catch(n){v(t,{complaint:n instanceof w?n.message:String(n)})}}async function Gb(e){let t=e.questions+1;v(e,{questions:t,is_measuring:!0,complaint:void 0,answer:void 0,inspection:void 0});let{upload:n,unit:o,role:i,up:r}=e;try{let l=await Fi({file:n,unit:o,role:i,up:r});t===e.questions&&v(e,{answer:l,is_measuring:!1})}catch(l){if(!(l instanceof w))throw l;if(t!==e.questions)return;let u=o?e.sizes:G1(l.complaint),c=u.length&&!o?void 0:B(l.complaint);v(e,{sizes:u,complaint:c,is_measuring:!1})}}async function J1(e){let{questions:t,upload:n,unit:o,up:i}=e;try{let r=await Hf({file:n,unit:o,up:i});t===e.questions&&v(e,{inspection:r})}catch(r){if(!(r instanceof w))throw r;t===e.questions&&v(e,{complaint:B(r.complaint)})}}function V1(e){return e.inspection?s`<h4>Every defect of the mesh</h4>
    ${e.inspection.defects.length?s`<ul>
            ${e.inspection.defects.map(Q1)}
          </ul>`:s`<p>None.</p>`}`:s`<button type="button" @click=${()=>{J1(e)}}>List every defect of the mesh</button>`}var Q1=({text:e})=>s`<li>${e}</li>`;function G1({asks:e,choices:t=[]}){if(e!=="unit")return[];let n=o=>(o??[]).map(i=>S(i,2)).join(" \xD7 ");return t.flatMap(({unit:o,size:i})=>o?[[o,n(i)]]:[])}function Bp(e,t){v(e,t),Gb(e)}function Yb(e,t){let n=l=>{let u=l.target;Vb(u.files?.[0]),u.value=""},o=l=>{l.preventDefault(),Vb(l.dataTransfer?.files[0])},[i,r]=a.files?.imports_meshes?["STL, OBJ, PLY, OFF, 3MF, glTF or GLB",".stl,.obj,.ply,.off,.3mf,.gltf,.glb"]:["STL, the binary kind (for others brimwright-import is missing beside the program)",".stl"];return s` <div class="drop" @dragover=${l=>l.preventDefault()} @drop=${o}>
      <label for="mesh-file">Drop a mesh file here, or choose one: ${i}</label>
      <input id="mesh-file" type="file" accept=${r} @change=${n} />
    </div>
    ${a.mesh?Y1(a.mesh,e,t):d}`}function Y1(e,t,n){let i=(e.sizes.length?e.sizes:[["mm",""],["cm",""],["in",""]]).map(([r,l])=>[r,l?`${r}: ${l} ${r}`:r]);return s` <h3>${e.name}</h3>
    ${e.share<1&&!e.complaint?s`<label for="sent">Sending, ${Math.round(100*e.share)} %</label
            ><progress id="sent" max="1" .value=${e.share}></progress>`:d}
    ${e.is_measuring?s`<p role="status">Measuring ...</p>`:d}
    ${e.upload&&!Dp.test(e.name)?s`<h4 id="unit-title">${e.unit?"Its unit":"Which size is it?"}</h4>
            ${ce("Unit of the file's numbers",e.unit,i,r=>Bp(e,{unit:r}))}`:d}
    ${e.complaint?s`<p class="alarm" role="alert">${e.complaint}</p>`:d}
    ${e.upload&&!e.is_measuring&&(e.complaint||e.answer)?V1(e):d}
    ${e.upload&&(e.unit||e.answer)?s`<h4>What it shows</h4>
            ${ce("Role",e.role??e.answer?.gauge.role,Mp,r=>Bp(e,{role:r}))}
            <h4>Which way is up</h4>
            ${ce("Up",e.up??"",Fp,r=>Bp(e,{up:r||void 0}))}`:d}
    ${e.answer?s`${Yi(e.answer)} ${Z1(e,t,n)}`:d}`}var Zb=e=>e.answer.gauge.role!=="cavity"||e.answer.gauge.pockets.length>1;function Z1(e,t,n){let o=String(K().name??"").trim(),i=Nl(o),r=o&&!i&&!e.is_keeping;return s`${Pp()} ${Op(Zb(e))} ${Lp(o,i)}
    <div class="choice">
      <button type="button" class="strong" ?disabled=${!r} @click=${()=>Qb(e,n,t)}>
        Use this mould
      </button>
      <button type="button" ?disabled=${e.is_keeping} @click=${()=>Qb(e,n)}>More settings</button>
    </div>
    ${e.is_keeping?s`<p role="status">Keeping it ...</p>`:d}
    <p class="hint">More is: water weighed in it, measures as a check, a mesh that leans or stands on a board.</p>`}async function Qb(e,t,n){v(e,{is_keeping:!0});try{let o=X1(e,await Vf(e.upload,tA(e.name)));if(!n||e.answer.gauge.pockets.length>1&&!await eA(o))return t(o);Ei(o,"mesh",ie().title),await bs(n),v(e,{complaint:a.mould?.complaint?.line})}catch(o){v(e,{complaint:o instanceof w?o.message:String(o)})}v(e,{is_keeping:!1})}function X1(e,t){let n={file:t,role:e.answer.gauge.role};e.unit&&(n.unit=e.unit),e.up&&(n.up=e.up);let{cavities:o,...i}=K();return{...i,...Zb(e)||o===void 0?{}:{cavities:o},mesh:n}}async function eA(e){try{return await ln({file:"new.mould.json",mould:e}),!0}catch(t){if(t instanceof w&&t.status===422)return!1;throw t}}var tA=e=>vi(e.replaceAll(/[^\w.-]+/g,"_"),a.files?.meshes??[]);var Ul={measures:"By its inside measures",mesh:"From a mesh file",water:"By measures and weighed water"},Xb={schema:"brimwright.mould/2",name:"",cavities:1,owned:1};function ew(e){De(),_n();let t={...Xb,shape:ql("block")};e==="mesh"?Ei(Xb,"mesh",Ul[e]):Ei(e==="water"?{...t,water:Ap}:t,"form",Ul[e]),Kl()}async function tw(e,t){_n();let n=await G_(e,t);return n&&Kl(),n}async function zl(e){_n(),await Y_(e)&&Kl()}function nA(e){Ei(e,"form","More about this mould"),Kl()}function Kl(){requestAnimationFrame(()=>document.querySelector("#mould-form")?.focus())}function nw(e){if(!a.mould)return;let{way:t,title:n}=a.mould;return s`<section aria-labelledby="mould-form">
    <h2 id="mould-form" tabindex="-1">${n}</h2>
    ${t==="mesh"?Yb(e,nA):zb(e)}
  </section>`}var Cp=()=>f({chosen_mould:void 0});function ys(e,t){De();let n=a.files?.moulds.find(r=>r.file===e),o=a.catalogue.find(r=>r.path===e),i={file:e,name:n?.name||o?.name||e,note:n?.note??"",shipped:n?.shipped??!0,sell:"",slice:"",told:t};f({chosen_mould:i}),ow(i),requestAnimationFrame(()=>document.querySelector("#mould-title")?.focus())}var oA=2e3;async function ow(e){if(e===a.chosen_mould)try{v(e,{answer:await Fi({file:e.file})}),v(e,{complaint:void 0})}catch(t){v(e,{complaint:t instanceof w?t.message:String(t)}),t instanceof w&&t.may_pass&&window.setTimeout(()=>{ow(e)},oA)}}var iA=e=>a.files?.moulds.find(t=>t.file===e);function iw(e,t){let n=()=>t(async()=>{await tw(e.file,e.shipped)&&Cp()});return s`<section aria-labelledby="mould-title">
    <h2 id="mould-title" tabindex="-1">
      ${e.name} <small>${e.shipped?"built-in":`your own, ${e.file}`}</small>
    </h2>
    ${e.told?s`<p role="status">${e.told}</p>`:d} ${e.note?s`<p>${e.note}</p>`:d}
    ${bl(iA(e.file))}
    ${e.complaint?s`<p class="alarm" role="alert">It cannot be measured: ${e.complaint}</p>`:d}
    <div class="beside">
      <div>
        ${e.answer?Yi(e.answer):e.complaint?d:s`<p role="status">Measuring ...</p>`}
        ${Cl(Bb(e.file,e.answer?.gauge))}
        <button type="button" @click=${n}>${e.shipped?"Change a copy of it":"Change it"}</button>
      </div>
      ${e.complaint?d:aA(e,t)}
    </div>
  </section>`}var rw=({answer:e})=>(e?.gauge.pockets[0]?.brimful_ml??0)>=Tp;function rA(e){let t=rw(e)?e.slice.trim():"";return Oe(t)?`${t} mm`:t||void 0}var sA=e=>s`<div class="field short">
    <label for="mould-slice" data-said="mm">Thickness of a slice</label>
    <input
      id="mould-slice"
      .value=${P(e.slice)}
      @input=${t=>v(e,{slice:t.target.value})}
      autocomplete="off"
      spellcheck="false"
      aria-describedby="mould-slice-said"
    />
    <p class="hint" id="mould-slice-said">Left blank, it is not cut into slices.</p>
  </div>`;function aA(e,t){let n=Fl(e.sell),o=rA(e),i=r=>()=>t(()=>tl({mould:e.file,name:e.name,formula:r,sell:n,slice:o}));return s`<div>
    <h3>Make a run with it: how many, and which base?</h3>
    <div class="row">
      ${Ll("mould-sell",e.sell,r=>v(e,{sell:r}))}
      ${rw(e)?sA(e):d}
    </div>
    ${n?d:s`<p class="hint">A base can be chosen once you say how many.</p>`}
    <ul class="cards">
      ${(a.files?.formulas??[]).map(r=>s`<li>
            <button type="button" ?disabled=${!e.answer||!n} @click=${i(r.file)}>
              <b>${r.name}</b><span>${r.note||r.file}</span>
            </button>
          </li>`)}
    </ul>
  </div>`}function vs(){let{view:e,run:t,order:n,formula_of:o,formulas:i,mould:r,chosen_mould:l,stock:u}=a;if(e!=="reading")return On(e)?{name:e,file:t.file,of:t}:e==="moulds"&&r?{name:"describing",file:r.open.id,of:r}:e==="moulds"&&l?{name:"chosen",file:l.file,of:l}:e==="order"?{name:e,file:n?.open.file,of:n}:e==="trail"?{name:e,file:u.trail?.of}:e!=="formula"?{name:e}:o==="apart"?{name:"formula",file:i.apart?.file,of:i.apart}:{name:yr[o],file:t.file,of:t}}async function aw({name:e,file:t}){let n=De();if(!(!(e===yr.apart&&a.formulas.apart?.file===t)&&!await nl())&&n())try{await lA(e,t)}catch(i){if(!(i instanceof w||i instanceof SyntaxError))throw i;f({view:"runs",list_complaint:i.message})}}async function lA(e,t=""){let n=e;if(On(n))return sw(t,n);let o=["pour","pipe"].find(i=>yr[i]===e);if(o){await sw(t,"formula"),a.view==="formula"&&at(o);return}if(e===yr.apart)return Xr(t);if(e==="order")return Gt(t);if(e==="trail"&&t)return Be(t);await dA(e,t)}async function sw(e,t){e===a.run.file||!e?f({view:a.run.file?t:"runs",typed:void 0}):await Nn(e,t)}async function dA(e,t){let n=e;Cp(),_n(),f({view:ct(n)?n:"moulds",list_complaint:"",list_told:"",list_open:void 0,held_open:void 0,fault:void 0});let o=va(it).find(i=>i.id===t);e==="describing"&&o&&await zl(o),e==="chosen"&&ys(t),e==="shelf"&&uA(),cA()}function uA(){k_(),ho()}async function cA(){try{await Ot(),Ga()}catch(e){if(!(e instanceof w))throw e;f({list_complaint:e.message})}}var kt={id:""},Ze,Wp=!1,Ep=new Map,Jl=JSON.parse(sessionStorage.getItem("left")??"{}");function dw(){let e=vs();Wp||!e||Ze&&Rt(Ze)===Rt(e)||(Vl(),uw(e))}function uw(e){let t=!Ze||Ze.name===e.name&&Ze.of!==void 0&&Ze.of===e.of;if(Ze=e,t)return Xi();kt={id:crypto.randomUUID(),before:location.hash},Ep.set(kt.id,e.of),history.pushState(kt,"",Rt(e)),requestAnimationFrame(mA)}function Xi(){Ze&&(kt.id||(kt={id:crypto.randomUUID()}),Ep.set(kt.id,Ze.of),history.replaceState(kt,"",Rt(Ze)))}var pA="button, input, select, summary, a[href], [tabindex]",Ip=e=>e.id||(e.getAttribute("aria-label")??e.textContent).trim(),cw=e=>[...document.querySelectorAll(`#main :is(${pA})`)].filter(t=>Ip(t)===e);function Vl(){let e=document.activeElement;!e?.closest("#main")||e.id==="main"?Jl[kt.id]={scroll:scrollY}:Jl[kt.id]={scroll:scrollY,words:Ip(e),nth:cw(Ip(e)).indexOf(e)}}function mA(){scrollTo(0,0),document.activeElement?.closest("#main")||pw()}function pw(){let e=document.querySelector("#main h1");e&&(e.tabIndex=-1,e.focus({preventScroll:!0}))}function mw(){let{scroll:e,words:t,nth:n=0}=Jl[kt.id]??{scroll:0},o=t===void 0?void 0:cw(t)[n];o?o.focus({preventScroll:!0}):pw(),scrollTo(0,e)}var Xe=e=>fw({name:e,file:On(e)?a.run.file:void 0});async function fw(e){Vl(),await Np(e,()=>{let t=vs();t&&!(Ze&&Rt(Ze)===Rt(t))&&uw(t)})}async function Np(e,t){Wp=!0;try{await aw(e)}finally{Wp=!1,t()}}function hw(e){kt.before===Rt(e)?history.back():fw(e)}var lw=Promise.resolve();function fA(e,t){Vl();let n=()=>history.state?.id!==e?.id;lw=lw.then(async()=>{if(!t)return Xi();if(n())return;let o=e?Ep.get(e.id):void 0,i=[a.run,a.formulas.apart,a.order].find(r=>r&&r===o);await Np(i?{...t,file:"open"in i?i.open.file:i.file}:t,()=>{Ze=vs(),!n()&&(kt=e??{id:crypto.randomUUID()},Xi(),requestAnimationFrame(mw))})})}function gw(){history.scrollRestoration="manual",addEventListener("popstate",e=>{Df()||fA(e.state,Gd(location.hash))}),addEventListener("pagehide",()=>{Vl(),sessionStorage.setItem("left",JSON.stringify(Jl))})}async function _w(){let e=Gd(location.hash);e&&(kt=history.state??{id:""});let t=De();await U_(Yf(e)),e&&t()&&hA(e)&&await Np(e,()=>{Ze=vs(),Xi(),requestAnimationFrame(mw)}),await Rc()}var hA=e=>!Ze||Rt(Ze)===Rt(e);function ai(e=a.plan?"The figures below are out of date.":"No figures yet."){let t=Al()?void 0:a.complaint;return s`<div class="complaints" role="status">
      ${t?s`<p class="alarm">
                <strong>${e}</strong>
                ${Jn(t.field)}${B(t)}
              </p>
              ${t.is_fault?s`<button type="button" @click=${Hp}>Ask again</button>`:d}
              ${Bt("run")?$s(a.run.now,t.keep,(n,o)=>Z("run",n,o)):jp(t)}
              ${gA()?s`<button type="button" @click=${qp}>Go to the field</button>`:d}`:d}
    </div>
    ${fs()}`}function jp({keep:e}){let{studio:t}=a.beside;return t&&Bt("studio")?$s(t.now,e,(n,o)=>Z("studio",n,o)):d}function Jn(e){let t=e.split("/").slice(1).map(n=>/^\d+$/.test(n)?` ${Number(n)+1}`:`, ${n.replaceAll("_"," ")}`);return t.length?`${t.join("").slice(2)}: `:""}function Hp(){se(),a.run.failed&&pn()}function gA(){if($w())return!0;let e=$n();return e?document.activeElement!==e:_A()}var _A=()=>a.view!=="set-up"&&Bt("run")&&a.complaint!==void 0&&a.complaint.field!=="",$w=()=>["pour","pipe"].find(e=>a.complaint?.file&&a.complaint.field&&Bt(e));function qp(){let e=$n(),t=$w();if(e)return nt(e);t?at(t):Xe("set-up"),$A(()=>nt($n()))}function $A(e){requestAnimationFrame(()=>requestAnimationFrame(e))}var bw=()=>[...wa().map(e=>yn(e)),...ba().map(vn)];function ww(){let e=a.formula_of,t=a.formulas[e];if(!t)return s`<h1 id="formula-title" tabindex="-1">Formula</h1>
      ${bw()}${ai()}
      <p>Reading the formula ...</p>
      ${zp(e)}`;let n=a.plan&&Vi(a.plan),o=e==="pipe"?n?.whippings[0]:n?.pour;return s`${bw()}
    <h1 id="formula-title" tabindex="-1">${String(t.now.name||"Unnamed formula")}</h1>
    <p class="aside">${bA(e)}</p>
    <div class="choice">${zp(e)}${e==="apart"?wA():d}</div>
    ${Qi(a.files?.formulas.find(i=>i.file===t.file))} ${yA(e,o,n)} ${vw(e)}
    ${cp(e)} ${mp(e,o)} ${hp(e)} ${sp(e)}
    <div class="choice">${zp(e)}</div>`}var yw=e=>[vw(e),cp(e),mp(e,void 0),hp(e),sp(e)],Up=()=>String(a.run.now.name??a.run.file);function bA(e){let t=a.formulas[e],n=t.shipped?" Built-in: your first change is saved as a copy.":"",o=a.formulas.pour===t&&a.formulas.pipe===t;return e==="apart"?`Opened on its own; the figures are for a base of "${Up()}".${n}`:o?`Base and topping of "${Up()}" are both made of it.${n}`:`${e==="pour"?"Base":"Topping"} of "${Up()}".${n}`}function zp(e){let t=e==="apart";return s`<button type="button" class="strong" @click=${()=>hw(t?{name:"formulas"}:{name:a.came_from,file:a.run.file})}>
    ${t?"Close the formula":"Back to the run"}
  </button>`}function wA(){return s`<button type="button" @click=${()=>{Sc("pour")}}>Use it as the base</button> ${yt()?s`<button type="button" @click=${()=>{Sc("pipe")}}>Use it as the topping</button>`:d}`}function yA(e,t,n){return s`<section class="strip" aria-label="What comes of it">
    ${t&&n?s`<dl>
            ${[...vA(e,n),...kA(e,t)].map(([o,i,r])=>s`<div class=${a.is_old?"old":""}>
                  <dt>${o} ${r?wo(r):d}</dt>
                  <dd><b>${i}</b></dd>
                </div>`)}
          </dl>`:d}
    ${xA(e)}
  </section>`}function vA(e,t){let n=e==="pipe"?ep(t,t.whippings[0]):"";return n?[["For one whipping",n]]:Ye(t.whole)?[["For one batch",nn(t.whole,t.batch)]]:[]}function kA(e,t){let n=_o(e).length?" \u26A0":"";return[["Fats",x(H(a.units,t.fats_g))],["Superfat as weighed",`${lt(t.superfat_percent.effective)}${n}`,"superfat_as_weighed"],...xl(t).map(({one:o})=>[o.name,x(si(a.units,o))])]}function xA(e){let t=Al()?void 0:a.complaint;if(!t)return s`<div role="status"></div>
      ${fs()}`;let n=Bt(e),o=n&&t.field!==""&&document.activeElement!==$n();return s`<div role="status" class="asks">
      <p class="alarm">
        <strong>${a.plan?"These figures are out of date.":"No figures yet."}</strong>
        ${n?"":"Not about this formula: "}${Jn(t.field)}${B(t)}
      </p>
      ${t.is_fault?s`<button type="button" @click=${Hp}>Ask again</button>`:d}
      ${o?s`<button type="button" @click=${()=>$n()?.focus()}>Go to the field</button>`:d}
    </div>
    ${fs()}`}function vw(e){return s`<section class="card" aria-label="Name">
    ${h({label:"Name",of:e,at:"/name",wide:!0})}
    ${M({of:e,name:"note",pointers:["/note"],summary:"Your note",body:()=>h({label:"Note",of:e,at:"/note",optional:!0,wide:!0})})}
  </section>`}var Kp=e=>v(a.new_formula,e);function kw(){let{name:e,copied:t}=a.new_formula,n=[...a.files?.formulas??[]].sort((i,r)=>Number(i.shipped)-Number(r.shipped)),o=i=>()=>pe(async()=>{await i(e.trim()),Kp({name:"",copied:""})});return s`${Wt("Formulas")}
    <section aria-label="Formulas">
      ${on(n,TA)}
      <h2>A new formula</h2>
      <div class="row">
        <div class="field">
          <label for="new-formula">What you call it</label>
          <input
            id="new-formula"
            .value=${P(e)}
            @input=${i=>Kp({name:i.target.value})}
            autocomplete="off"
            spellcheck="false"
          />
        </div>
        <button type="button" ?disabled=${!e.trim()} @click=${o(K_)}>Begin from blank</button>
      </div>
      <div class="row">
        <div class="field choose">
          <label for="copied-formula">Or as a copy of</label>
          <select
            id="copied-formula"
            @change=${i=>Kp({copied:i.target.value})}
          >
            <option value="" .selected=${P(t==="")}>choose ...</option>
            ${n.map(i=>s`<option value=${i.file} .selected=${P(i.file===t)}>${i.name||i.file}</option>`)}
          </select>
        </div>
        <button
          type="button"
          ?disabled=${!e.trim()||!t}
          @click=${o(i=>J_(t,i))}
        >
          Make the copy
        </button>
      </div>
      ${e.trim()?"":s`<p class="hint">A new formula needs a name first.</p>`}
    </section>
    ${It("formula")}`}function TA(e){let t=e.changed?[`changed ${N(e.changed)}`]:[];return kn({kind:Ho,one:e,facts:t,open:()=>Xr(e.file)})}function RA(e){_n(),ys(e,`Saved in ${e}.`)}function xw(){let{chosen_mould:e}=a;return s`${Wt("Moulds")}
  ${e?iw(e,pe):nw(RA)??s`${PA()} ${SA()}`}`}function SA(){let e=(a.files?.moulds??[]).filter(n=>!n.shipped),t=a.catalogue.map(n=>({file:n.path,name:n.name,note:"",shipped:!0}));return s`<section aria-labelledby="moulds-title">
    <h2 id="moulds-title">Moulds: start a run with one, or change it</h2>
    ${on([...e,...t],AA)} ${It("mould")}
  </section>`}function AA(e){let t=e.shipped?DA(e.file):FA(e.file),n=()=>Promise.resolve(ys(e.file));return kn({kind:it,one:e,facts:t,picture:e.file,open:n})}var DA=e=>a.catalogue.filter(t=>t.path===e).map(t=>`${x(ke(a.units,t.brimful_ml))}, ${z(t.cavities,"cavity","cavities")}; ${t.description}`);function PA(){return s`<section aria-labelledby="own-title">
    <h2 id="own-title">A new mould of your own</h2>
    ${OA()}
    <div class="choice">
      ${Object.entries(Ul).map(([e,t])=>s`<button type="button" @click=${()=>ew(e)}>${t}</button>`)}
    </div>
  </section>`}function OA(){return va(it).map(e=>{let t=String(ye(e.text)?.name??"").trim()||MA(e)||"a mould without a name yet";return s`<div class="banner">
      <p>Your unsaved mould <b>${t}</b> is still here.</p>
      <div class="choice">
        <button type="button" @click=${()=>pe(()=>zl(e))}>Continue</button>
        <button type="button" @click=${()=>{eo(it,e.id),Q()}}>Discard it</button>
      </div>
    </div>`})}var MA=({file:e})=>a.files?.moulds.find(t=>t.file===e)?.name;function FA(e){let t=yc(e);return t?"complaint"in t?[`it cannot be measured: ${t.complaint}`]:[x(ke(a.units,t.brimful_ml)),z(t.cavities,"cavity","cavities")]:["measuring ..."]}var LA=300,BA=1e3;function Ql(){let{quoted:e,plan:t,quote_wish:n,is_old:o}=a,i=e?.of===t&&e?.wish===n;!i&&!o&&CA();let r=i?e?.complaint:void 0;return{quote:e?.quote,complaint:r,is_old:o||!i||r!==void 0}}function Vp(){a.quoted&&f({quoted:{...a.quoted,of:void 0}})}var ks,Jp=!1;function CA(){let{plan:e,quote_wish:t}=a;Jp||ks?.of===e&&ks?.wish===t||(window.clearTimeout(ks?.timer),ks={of:e,wish:t,timer:window.setTimeout(()=>{IA()},a.quoted?LA:0)})}var Gl=e=>e.split(/[\s,;]+|\band\b/).filter(Boolean).join(",");function Tw(e,{numbers:t="",by:n,figure:o}){let i=Gl(t);return{...e,...i&&{sell:i},...n&&o.trim()&&{[n]:o}}}var Yl=()=>Tw({file:a.run.file,run:a.run.now},a.quote_wish);function WA(e,{numbers:t=""}){return e.field==="/sell"&&Gl(t)?{...e,file:"",field:"sell"}:e}async function IA(){ks=void 0;let{run:e,plan:t,planned:n,quote_wish:o,is_old:i}=a;if(!(!t||!n||i)){Jp=!0;try{let r=await Nf(Tw(n,o));e===a.run&&f({quoted:{of:t,wish:o,quote:r}})}catch(r){if(!(r instanceof w))throw r;if(e!==a.run)return;let l=WA(r.complaint,o);f({quoted:{of:t,wish:o,quote:a.quoted?.quote,complaint:l}}),r.may_pass&&window.setTimeout(Vp,BA)}finally{Jp=!1}}}var EA=300,Rw=1e3,Gp=({open:e})=>[e.now,e.file,a.plan,Jo(),a.recorded],Yp=e=>{let{by:t,figure:n}=a.quote_wish;return[...Gp(e),e.times,t,n]},Xl=(e,t)=>e!==void 0&&e.every((n,o)=>n===t[o]);function Sw(){let e=me(),{quoted:t}=e;if(!mn(e.open.now)||e.open.theirs)return{is_old:!0};let n=Xl(t?.of,Yp(e));!n&&!a.is_old&&NA(e);let o=n?t?.complaint:void 0;return{quote:t?.quote,complaint:o,is_old:a.is_old||!n||o!==void 0}}function Aw(){let e=me(),t=mn(e.open.now)&&Xl(e.once?.of,Gp(e));return{made:e.once?.made,is_old:a.is_old||!t}}function ed(){let{quoted:e}=me();e&&v(me(),{quoted:{...e,of:[]}})}function Zp({open:e,times:t}){let{by:n,figure:o}=a.quote_wish,i=Gl(t);return{file:e.file,order:e.now,...i&&{times:i},...n&&o.trim()&&{[n]:o}}}var Zl,Qp=!1;function NA(e){let t=Yp(e);Qp||Xl(Zl?.of,t)||(window.clearTimeout(Zl?.timer),Zl={of:t,timer:window.setTimeout(()=>{jA(e)},e.quoted?EA:0)})}async function jA(e){if(Zl=void 0,e===a.order){Qp=!0;try{if(await rt(),await ht(),await Ri(),await Ja(),!mn(e.open.now))return;let t=Yp(e);await HA(e,t)}catch(t){if(!(t instanceof w))throw t}finally{Qp=!1,v(e,{})}}}async function HA(e,t){let n=Gp(e);try{let o=await Qd(Zp(e));v(e,{quoted:{of:t,quote:o}});let i=Dw(o);if(i)return v(e,{once:{of:n,made:i}})}catch(o){if(!(o instanceof w))throw o;v(e,{quoted:{of:t,quote:e.quoted?.quote,complaint:o.complaint}}),o.may_pass&&window.setTimeout(()=>e===a.order&&ed(),Rw)}Ti(e.open.now).length&&!Xl(e.once?.of,n)&&await qA(e,n)}var Dw=({times:e})=>e.find(t=>t.times===1);async function qA(e,t){let{file:n,now:o}=e.open;try{v(e,{once:{of:t,made:Dw(await Qd({file:n,order:o}))}})}catch(i){if(!(i instanceof w))throw i;v(e,{once:i.may_pass?void 0:{of:t}}),i.may_pass&&window.setTimeout(()=>e===a.order&&ed(),Rw)}}function Pw(){let{now:e}=me().open;return s`<div class="row">
      ${fe({of:"order",label:"Pieces that are made already",at:"/ready",answers:[["take","take them first"]],unsaid:"leave them",optional:!0,chosen:e.ready==="take"?"take":""})}
    </div>
    ${gt(e).map((t,n)=>UA(t.ready,n))}`}function UA(e,t){let n=`/lines/${t}/ready`;if(e===void 0)return s`${W("order",n)}`;let o=Array.isArray(e)?`takes pieces of ${e.length===1?"batch":"batches"} ${e.join(", ")} alone`:e==="take"?"takes pieces that are made already":"leaves them";return s`${W("order",n)}
    <p>
      Line ${t+1} ${o}, whatever the order says.
      <button type="button" @click=${()=>Z("order",n,void 0)}>Line ${t+1}: as the order says</button>
    </p>`}var Ow=(e,t)=>Z("order",`/lines/${e}/ready`,t);var er={of:"order",at:"/lines",in_order:!0,stays:!0};function Mw(){return s`<section class="card" aria-label="The order">
    <div class="row">
      ${h({of:"order",label:"For",at:"/for",optional:!0})}
      ${h({of:"order",label:"Due",at:"/due",date:!0,optional:!0,short:!0})}
      ${h({of:"order",label:"Note",at:"/note",optional:!0})}
    </div>
    <h2>What is ordered</h2>
    ${W("order","/lines")} ${k(er).map((e,t)=>zA(t))} ${KA()} ${Pw()}
  </section>`}var Fw=()=>(a.files?.runs??[]).filter(({shipped:e})=>!e);function Lw(e){let t=At(me().open.file,e);return a.files?.runs.find(n=>n.file===t)}var Bw=e=>Lw(e)?.name||e;function Cw(e){let{file:t,now:n}=me().open,o=Le(t),i=gt(n).flatMap(({run:r})=>r&&r!==e?At(t,r):[]);return Fw().filter(({file:r})=>r.startsWith(o)&&!i.includes(r)).map(({file:r,name:l})=>[r.slice(o.length),l||r])}function zA(e){let{run:t}=gt(me().open.now)[e]??{run:""},n=`/lines/${e}`,o=Lw(t)?.pieces,i=t?Bw(t):`line ${e+1}`;return s`<div class="row" id=${E(er,e)} role="group" aria-label=${i}>
    ${fe({of:"order",label:"Run",at:`${n}/run`,answers:Cw(t),unsaid:"choose ..."})}
    ${h({of:"order",label:"Pieces",at:`${n}/pieces`,count:!0,short:!0,hint:o===void 0?void 0:`The run itself: ${z(o,"piece")}`})}
    ${k(er).length>1?h({of:"order",label:"Poured with others",at:`${n}/together`,optional:!0,short:!0,hint:"Lines with one word, such as A, share one base."}):d}
    ${J(er,e,i)}
  </div>`}function KA(){let e=Cw();return Fw().length?e.length?s`<div class="row">
    ${fe({of:"order",label:k(er).length?"Another run":"The run that is ordered",at:"/lines/-",answers:e,unsaid:"choose ...",optional:!0,chosen:"",take:t=>t&&U(er,{run:t},Bw(t))})}
  </div>`:s`${d}`:s`<p class="hint">
      An order is of runs of your own, and there is none yet: make one, or copy an example.
    </p>`}async function li(e,t){try{if(Ww(e))return await JA(e,t);if(ja({run:e},t),a.run.file!==e)return await Nn(e,"record");a.record.run===e&&gn(t),f({view:"record"})}catch(n){if(!(n instanceof w))throw n;D(n.message),f({stock:{...a.stock,told:{of:"",sentences:[n.message]}}})}}var Ww=e=>a.files?.orders.some(t=>t.file===e)??!1;async function JA(e,t){await Gt(e);for(let n of Ti(me().open.now)){let{record:o}=await Ur({run:e,together:n},t);if(o.batches.some(({begun:i})=>i.id===t))return VA({run:e,together:n},t)}D("No lines of this order are poured from that base any more")}function VA(e,t){Xp(e.run,e.together),ja(e,t),Jr(e),gn(t),Pe({is_led_to:!0})}var Iw=e=>`poured together ${e}`;function Xp(e,t){sessionStorage.setItem(Iw(e),t),f({})}function Ew(e,t){let n=sessionStorage.getItem(Iw(e));return t.find(o=>o===n)??t[0]}async function Nw(e){try{let{trail:t}=await Va(`batch ${e}`),n=t.batches.find(({batch:o})=>o===e);if(n&&Ww(n.file))return await li(n.file,n.id)}catch(t){if(!(t instanceof w))throw t}Be(`batch ${e}`)}var xs=e=>{let{beginning:t}=a.record;t&&Pe({beginning:{...t,...e}})},jw=e=>Pe({beginning:{batch:e,act:crypto.randomUUID(),code:"",answers:{}},told:void 0}),em=()=>Pe({beginning:void 0}),Hw=e=>xs({code:e,complaint:void 0});async function tm(e){let{beginning:t,together:n}=a.record;if(!(!t||t.is_asking)){xs({is_asking:!0,complaint:void 0});try{n!==void 0?await rt():a.run.shipped&&await to(a.run),await ht(),await(n===void 0?QA(t,e):GA(t))}catch(o){if(!(o instanceof w))throw o;xs({complaint:o.complaint}),D(`Not begun: ${o.complaint.problem}`)}finally{xs({is_asking:!1})}}}var qw=({batch:e,code:t,answers:n})=>({batch:e,code:t.trim()||void 0,again:Vt(e)!==void 0,...n});async function QA(e,t){let n=a.run.file,o=Uw(await nc({run:n,seen:t,...qw(e)}),{run:n});za(o,Qo(e.batch)),await Cn()}async function GA(e){let{run:t,together:n}=a.record,{act:o}=e,i=await nc({run:t,together:n,act:o,...qw(e)});a.record.run!==t||a.record.together!==n||gn(Uw(i,{run:t,together:n}).begun.id)}function Uw(e,t){let[n]=e.record.batches;return Pe({...t,beginning:void 0,told:{batch:n.begun.id,remarks:(e.record.remarks??[]).map(o=>o.text)}}),Na(e,t),D(`The record is begun: ${n.begun.code}`),n}async function zw(e,t){let{beginning:n}=a.record;if(!n)return;let{answers:o}=n,i=r=>{let l=e[r];return l===void 0?o[r]:[...o[r]??[],l]};xs({answers:{confirmed:i("confirmed"),lot:i("lot"),"beyond-stock":i("beyond-stock")}}),await tm(t)}var nm=(e,t)=>Pe({code:{batch:e,text:t}}),td=()=>Pe({code:void 0});async function Kw(){let{code:e,run:t,together:n}=a.record;if(!e?.text.trim())return td();try{let o=crypto.randomUUID(),i={run:t,together:n};Na(await Ca({...i,batch:e.batch,act:o,code:e.text.trim()}),i),td()}catch(o){if(!(o instanceof w))throw o;Pe({code:{...e,complaint:B(o.complaint)}})}}var Ts="batch-code";function tr({begun:e,lines:t}){let{code:n}=a.record,o=n?.batch===e.id,i=()=>{nm(e.id,e.code),C(L(Ts))};return s`<div class="batch-code">
    <p>
      <span class="aside">${t.length?"On the pot:":"On the mould:"}</span> <b class="code">${e.code}</b>
    </p>
    ${o?s`<div class="row">
            <div class="field ${n.complaint?"wants":""}">
              <label for=${Ts}>Another code</label>
              <input
                id=${Ts}
                autocomplete="off"
                .value=${P(n.text)}
                aria-describedby=${n.complaint?`${Ts}-said`:d}
                @input=${r=>nm(e.id,r.target.value)}
              />
            </div>
            <button type="button" class="strong" @click=${()=>{Kw()}}>Use this code</button>
            <button type="button" @click=${td}>Leave it</button>
            ${n.complaint?s`<p class="complaint" id="${Ts}-said">${n.complaint}</p>`:d}
          </div>`:s`<button type="button" @click=${i}>Change the code</button>`}
  </div>`}function nd(){let{batches:e}=a.record;if(e.length<2)return d;let t=Ci();return s`<ul
    class="makings"
    aria-label=${a.record.together===void 0?"Batches of this run":"Batches of this base"}
  >
    ${[...e].reverse().map(n=>YA(n,n.begun.id===t?.begun.id))}
  </ul>`}function YA(e,t){let{id:n,code:o}=e.begun,i=Ua(n);return s`<li>
    <button type="button" aria-pressed=${t?"true":"false"} @click=${()=>gn(n)}>
      <b>${o}</b> <span>${Rs(e)}</span>
      <small>${im(e)}; ${z(e.noted,"blank")} noted${i?`; ${i} not taken`:""}</small>
    </button>
  </li>`}function Rs({number:e,begun:t,lines:n}){let{of:o=1}=a.record,i=o>1||e>1?`batch ${e} of ${Math.max(o,e)}, `:"",r=n.length?"":`${z(t.pieces,"piece")}, `;return`${i}${r}begun ${N(t.begun_on)}`}var om=({for_sale:e,not_for_sale_because:t=""})=>e?"For sale":`Not for sale: ${Te(t)}`,im=e=>e.lines.length?`poured into ${e.lines.map(({code:t})=>t).join(", ")}`:om(e);var rm="begin-title";function Jw(e){let{record:t}=a;if(t.run!==a.run.file||t.version===void 0)return d;let{number:n,since:o}=e,i=o===void 0?void 0:Vt(n,o);return i?ZA(i,e):sm(e)}function sm(e,t="Lye is mixed: begin the record"){let{number:n,is_due:o}=e,{beginning:i}=a.record;return i?.batch===n?XA(i,e):s`<div class="begin-record">
    <button type="button" class=${o?"strong":""} @click=${()=>{jw(n),C(L(rm)),requestAnimationFrame(()=>document.querySelector(".begin-record.asked")?.scrollIntoView({block:"nearest"}))}}>${t}</button>
  </div>`}function ZA(e,{show:t}){let n=()=>{gn(e.begun.id),t()};return s`<div class="begin-record is-begun">
    ${tr(e)}
    <button type="button" class="strong" @click=${n}>Note what happens</button>
    ${am(e)}
  </div>`}function am({begun:e}){let{told:t}=a.record;return t?.batch===e.id&&t.remarks.length?s`<ul class="begin-remarks" role="status">
        ${t.remarks.map(n=>s`<li>${n}</li>`)}
      </ul>`:d}function XA(e,t){let{number:n,words:o,seen:i,is_struck:r}=t,l=Vt(n),{complaint:u,is_asking:c}=e,p=i===void 0,m=!r&&!c&&(p||!io(n));return s`<div class="begin-record asked" role="group" aria-labelledby=${rm}>
    <p id=${rm} tabindex="-1"><b>Begin the record of ${o}?</b> Its plan is kept with it as it is weighed.</p>
    ${l?eD(l,t):d}
    <div class="row">
      <div class="field">
        <label for="code-to-begin">${p?"Code on the pot":"Code on the mould"}</label>
        <input
          id="code-to-begin"
          autocomplete="off"
          .value=${P(e.code)}
          aria-describedby="code-to-begin-said"
          @input=${_=>Hw(_.target.value)}
        />
        <p class="hint" id="code-to-begin-said">
          Left blank: the day and the next letter.${p?" Each line gets the same with a number behind.":""}
        </p>
      </div>
      <button type="button" class="strong" ?disabled=${!m} @click=${()=>{tm(i)}}>
        ${c?"Beginning ...":l?"Begin another making":"Begin the record"}
      </button>
      <button type="button" @click=${em}>Not yet</button>
    </div>
    ${r?s`<p class="complaint">The weights are not those of what is typed.</p>`:d}
    ${u?tD(u,i):d}
  </div>`}var eD=(e,{show:t})=>s`<p>
      There is a record of it already, <b>${e.begun.code}</b>: ${im(e)}. If this is the same soap, go
      on in that one.
    </p>
    <p>
      <button
        type="button"
        @click=${()=>{em(),gn(e.begun.id),t()}}
      >
        Go on in ${e.begun.code}
      </button>
    </p>`;function tD(e,t){let n=e.choices??[],o=a.files?.orders.find(({file:i})=>nD(e.file,i))?.file;return s`<div role="alert">
    <p class="alarm">
      ${n.length||e.field==="begin"?`${ka(e.problem)}.`:`${B(e)}.`}
    </p>
    ${o!==void 0&&n.length?s`<button type="button" class="answer" @click=${()=>{Gt(o)}}>To the order</button>`:d}
    ${n.map(i=>s`<button type="button" class="answer" @click=${()=>{zw(i,t)}}>
          ${oD(i,e)}
        </button>`)}
  </div>`}var nD=(e,t)=>e===t||e.endsWith(`/${t}`);function oD(e,{field:t}){let{confirmed:n,lot:o}=e;return n==="by-itself"?"This batch is mixed by itself":n&&t==="begin"?`It is made once more, besides ${n}`:e["beyond-stock"]?`There is more than the records say: take it of lot ${e["beyond-stock"]}`:o?`Take ${o}`:`It is so: ${n??""}`}var iD={mass:["g","oz"],temperature:["\xB0C","\xB0F"],minutes:["min"],length:["mm","in"],volume:["ml"]};function Ss({kind:e,unit:t}){let n=iD[e]??[];return t&&n.includes(t)?[t,...n.filter(o=>o!==t)]:n}var Vw="degrees",rD=()=>localStorage.getItem(Vw)??void 0,Qw=e=>localStorage.setItem(Vw,e);function lm(e){return e.kind!=="temperature"?Ss(e)[0]:a.units!=="both"?a.units==="us"?"\xB0F":"\xB0C":rD()}function Gw(e,t){let n=e.kind==="length"&&t?t.startsWith("-")?"below":"above":void 0,o=n?t.replace(/^[+-]\s*/,""):t,i=Ft(o);return Ss(e).includes(i)?{number:o.slice(0,o.length-i.length).trim(),unit:i,side:n}:{number:o,side:n}}function Yw({number:e,unit:t,side:n}){let o=e.trim();if(!o)return"";let i=t&&Oe(o)?`${o} ${t}`:o;return n==="below"&&!/^[+-]/.test(i)?`-${i}`:i}function od({kind:e},{number:t,unit:n,side:o}){return e==="temperature"&&!n&&Oe(t)?"Is that in \xB0C or in \xB0F?":e==="length"&&o===void 0&&/[1-9]/.test(t)&&!/^\s*[+-]/.test(t)?"Above the line or below it?":void 0}var rn,sD=(e,t)=>`note-${e}-${t.replaceAll(/[^\w]/g,"-")}`;function id(e,t){let n=hn(e.begun.id,t.key),o=sD(e.begun.id,t.key),i=n?.refused!==void 0;return s`<div class="blank ${i?"wants":""}" data-key=${t.key}>
    ${t.kind==="choice"?s`<p class="blank-words" id="${o}-label">${t.words}</p>`:s`<label class="blank-words" for=${o}>${t.words}</label>`}
    <div class="blank-value">${aD(e,t,o,n)}</div>
    <p class="blank-beside">
      ${t.planned?s`<span class="planned">planned <b>${t.planned}</b></span>`:d}
      ${mD(e,t,n)}
    </p>
    ${_D(e,t,o,n)}
  </div>`}function aD(e,t,n,o){if(t.kind==="choice")return pD(e,t,n,o);let i=Zw(e,t,o),r=Ss(t).length>0||t.kind==="count",l=c=>dm(e,t,{...i,number:c.target.value}),u=c=>{ni(c),lD(e,t)};return s`<input
      id=${n}
      type=${t.kind==="date"?"date":"text"}
      inputmode=${t.kind==="count"?"numeric":r?"decimal":d}
      class=${r?"number":""}
      autocomplete="off"
      .value=${P(i.number)}
      aria-invalid=${o?.refused?"true":"false"}
      aria-describedby=${o?.refused||od(t,i)?`${n}-said`:d}
      @input=${l}
      @blur=${u}
      @keydown=${c=>c.key==="Enter"&&dD(c)}
    />
    ${uD(e,t,i)} ${cD(e,t,i)}`}function Zw({begun:e},t,n){if(rn?.batch===e.id&&rn.key===t.key)return rn.typed;if(n?.lacks)return{number:n.text,unit:t.kind==="temperature"?void 0:lm(t)};let o=Gw(t,n?n.value:t.noted??"");return{...o,unit:o.unit??lm(t)}}function dm(e,t,n,o=!1){rn={batch:e.begun.id,key:t.key,typed:n},Xw(e,t,n,o),Q()}function Xw(e,t,n,o){let i=od(t,n)!==void 0;pc(e,{key:t.key,text:n.number,value:Yw(n),is_left:o,lacks:i})}function lD(e,t){if(rn?.batch!==e.begun.id||rn.key!==t.key)return;let{typed:n}=rn;rn=void 0,Xw(e,t,n,!0),Q()}function dD({target:e}){[...document.querySelectorAll(".blank :is(input, button)")].find(n=>n.compareDocumentPosition(e)&Node.DOCUMENT_POSITION_PRECEDING)?.focus()}function uD(e,t,n){let o=Ss(t);if(t.kind!=="temperature")return o.length?s`<span class="unit">${n.unit??o[0]}</span>`:d;let i=r=>{Qw(r),dm(e,t,{...n,unit:r},!0)};return ey(`Degrees: ${t.words}`,o,n.unit,i)}function cD(e,t,n){if(t.kind!=="length")return d;let o=i=>dm(e,t,{...n,side:i},!0);return ey(`Side: ${t.words}`,["above","below"],n.side,o)}var ey=(e,t,n,o)=>s`<div class="choice" role="group" aria-label=${e}>
    ${t.map(i=>s`<button type="button" aria-pressed=${i===n?"true":"false"} @click=${()=>o(i)}>
          ${i}
        </button>`)}
  </div>`;function pD(e,t,n,o){let i=o?o.value:t.noted,r=l=>{fo(e,t.key,l),D(l?`${t.words}: ${l}`:`${t.words}: taken back`)};return s`<div class="choice" role="group" id=${n} aria-labelledby="${n}-label">
    ${(t.choices??[]).map(l=>s`<button type="button" aria-pressed=${l===i?"true":"false"} @click=${()=>r(l)}>
          ${l}
        </button>`)}
    ${i?s`<button type="button" class="plain" @click=${()=>r("")}>Take back</button>`:d}
  </div>`}function mD({begun:e},t,n){if(n?.refused??n?.lacks)return s`<span class="stands not">✗ not noted</span>`;if(n)return s`<span class="stands waiting">… not kept yet</span>`;let o=rn?.batch===e.id&&rn.key===t.key;return t.noted!==void 0&&!(o&&!rn.typed.number.trim())?s`<span class="stands kept">✓ noted ${gD(t.noted_at)}</span>`:d}var fD=new Intl.DateTimeFormat("en-GB",{hour:"2-digit",minute:"2-digit"}),hD=new Intl.DateTimeFormat("en-GB",{day:"numeric",month:"short"});function gD(e){if(!e)return"";let t=new Date(e);return(t.toDateString()===new Date().toDateString()?fD:hD).format(t)}function _D(e,t,n,o){if(o?.refused)return um(o,`${n}-said`);let i=od(t,Zw(e,t,o));return i?s`<p class="complaint" id="${n}-said">${i}</p>`:d}function um(e,t){let{words:n,is_asked:o,noted:i,is_lye:r}=e.refused,l=e.value||"nothing",u=i!==void 0;return s`<div class="blank-said" role="alert">
    <p class=${r?"alarm":"complaint"} id=${t} data-lye=${r?"true":d}>
      ${r?s`<strong aria-hidden="true">⚠</strong> `:d}${/^(is|was|makes|has|cannot) /.test(n)?`It ${n}`:n}.
    </p>
    ${o||u?s`<div class="row">
            ${u?s`<button type="button" @click=${()=>g_(e)}>Keep ${i||"it blank"}</button>`:d}
            <button type="button" @click=${()=>h_(e)}>
              ${u?`Note ${l} in its place`:`It is so: note ${l}`}
            </button>
          </div>`:d}
  </div>`}var ty="record weights";function ny(e){let{rows:t=[]}=e;if(!t.length)return d;let n=a.open.has(ty),o=t.filter(i=>n||i.noted!==void 0||hn(e.begun.id,i.key));return s`<section class="record-part" aria-labelledby="record-weights">
    <h2 id="record-weights" tabindex="-1">Really weighed</h2>
    <p class="aside">Only where it was not what was planned: its lot then loses what was used.</p>
    ${o.map(i=>s`${$D(i,o)} ${id(e,bD(i))}`)}
    <p>
      <button type="button" aria-expanded=${n?"true":"false"} @click=${()=>He("open",ty)}>
        ${n?"Fold the weights away":"Another weight than planned"}
      </button>
    </p>
  </section>`}var $D=(e,t)=>t.find(({of:n})=>n===e.of)===e?s`<h3>${e.of}</h3>`:d,bD=e=>({...e,kind:"mass",when:"base_mixed"});var As;function wD(){let e=new Date;return[e.getFullYear(),e.getMonth()+1,e.getDate()].map(t=>String(t).padStart(2,"0")).join("-")}var pm=e=>`cured.${e}`;function oy(e,t){let{id:n}=e.begun,o=As?.batch===n?As:{batch:n,day:wD(),pieces:"",weight:""},i=e.cured??[],r=i.find(({on:u})=>u===o.day),l=o.day!==""&&o.pieces.trim()!==""&&o.weight.trim()!=="";return s`<div class="blank cure" data-key=${t.key}>
    <p class="blank-words">
      Weighed while it cures ${t.planned?s`<small>planned, cured: ${t.planned}</small>`:d}
    </p>
    ${vD(n).map(kD)}
    ${i.length?s`<ul class="weighings">
            ${i.map(u=>TD(e,u))}
          </ul>`:s`<p class="aside">None noted yet.</p>`}
    <div class="row">
      ${cm("Day","cure-day","date",o.day,u=>({...o,day:u}))}
      ${cm("Pieces","cure-pieces","numeric",o.pieces,u=>({...o,pieces:u}))}
      ${cm(`Weight together, ${t.unit??"g"}`,"cure-weight","decimal",o.weight,u=>({...o,weight:u}))}
      <button type="button" ?disabled=${!l} @click=${()=>yD(e,t,o)}>
        ${r?"Put it in its place":"Note this weighing"}
      </button>
    </div>
    ${r?s`<p class="hint">Noted of ${N(r.on)} already: ${Ha(r)}.</p>`:d}
  </div>`}var cm=(e,t,n,o,i)=>s`<div class="field short">
    <label for=${t}>${e}</label>
    <input
      id=${t}
      type=${n==="date"?"date":"text"}
      inputmode=${n==="date"?d:n}
      autocomplete="off"
      .value=${P(o)}
      @input=${r=>{As=i(r.target.value),Q()}}
    />
  </div>`;function yD(e,{unit:t="g"},n){let o=Oe(n.weight)?`${n.weight.trim()} ${t}`:n.weight.trim(),i=n.pieces.trim(),r=`${i} ${i==="1"?"piece":"pieces"}, ${o}`;fo(e,pm(n.day),r),D(`Weighing of ${N(n.day)}: ${r}`),As=void 0,Q(),C(L("cure-pieces"))}var vD=e=>a.record.acts.filter(t=>t.batch===e&&t.key.startsWith("cured.")),kD=e=>{let t=N(e.key.slice(6));return e.refused?s`<p><b>${t}</b> <span class="stands not">✗ not noted</span></p>
        ${um(e,`said-${e.id}`)}
        <div class="row"><button type="button" @click=${()=>xD(e)}>Correct it</button></div>`:s`<p><b>${t}</b>: ${e.value||"taken back"} <span class="stands waiting">… not kept yet</span></p>`};function xD({batch:e,key:t,value:n}){let[,o="",i=""]=/^\s*(\S+) pieces?, (.*)$/.exec(n)??[];As={batch:e,day:t.slice(6),pieces:o,weight:i},Q(),C(L("cure-pieces"))}function TD(e,t){let n=hn(e.begun.id,pm(t.on));return s`<li>
    <span><b>${N(t.on)}</b>: ${Ha(t)} <span class="stands kept">✓ noted</span></span>
    ${n?d:s`<button
            type="button"
            aria-label="Take back the weighing of ${N(t.on)}"
            @click=${()=>fo(e,pm(t.on),"")}
          >
            Take back
          </button>`}
  </li>`}function iy(e,t){let{number:n,begun:o}=e,i=a.bench.run===a.record.run?oo(n):void 0,r=i&&new Date(i.begun_at)<=new Date(o.begun_at)?Qo(n):"";return!r||qa(e,t.key)||hn(o.id,t.key)?d:s`<p class="read-at-weights">
    <button type="button" @click=${()=>fo(e,t.key,r)}>
      Note ${r}, as read at the weights
    </button>
  </p>`}function ry({to_weights:e,to_learned:t}){mo();let n=Ci();return s`<section class="record" aria-labelledby="run-title">
    <h1 id="run-title" tabindex="-1">${a.plan?.run??String(a.run.now.name??"")}</h1>
    ${a.record.batches.length?s`<p><button type="button" @click=${t}>What your batches say</button></p>`:d}
    ${hm()} ${nd()} ${n?SD(n):RD(e)}
  </section>`}function hm(){let{failed:e,unsent:t,acts:n}=a.record,o=t!==void 0&&n.some(i=>!i.refused);return s`<div role="status">
    ${e!==void 0?s`<p class="alarm"><strong>What is recorded could not be read:</strong> ${e}.</p>`:d}
    ${o?s`<p class="alarm">
            <strong>Not kept yet:</strong> ${t}. What you type is kept in this browser, and sent as soon as the
            program answers.
          </p>`:d}
  </div>`}function RD(e){return a.record.version===void 0?s`<p class="hint">${a.record.failed===void 0?"Reading ...":""}</p>`:s`<p>No batch of this run is recorded yet. Its record begins when its lye is mixed, at the weights.</p>
    <p><button type="button" class="strong" @click=${e}>To the weights</button></p>`}function SD(e){return s`<div class="record-head">
      ${tr(e)}
      <p>${Rs(e)}</p>
      <p class="sale ${e.for_sale?"is":""}">
        <span aria-hidden="true">${e.for_sale?"\u2713":"\u2717"}</span> <b>${om(e)}</b>
      </p>
      ${AD(e)}
      ${rd()?s`<button type="button" @click=${()=>Be(`batch ${e.begun.code}`)}>What is in it</button>`:d}
    </div>
    ${gm(e)}`}function gm(e){let{blanks:t,as_weighed:n=[]}=e;return s`${n.map(({severity:o,text:i})=>s`<p class=${o==="danger"?"alarm":"aside"}>
        ${o==="danger"?s`<strong aria-hidden="true">⚠</strong> `:d}${i}
      </p>`)}
  ${t?MD(e,t):s`<p class="hint">Reading ...</p>`}`}function AD({poured_from:e}){if(e===null)return d;let t=s`Poured from the base <b>${e}</b>`;return rd()&&a.files?.orders.length?s`<button type="button" @click=${()=>{Nw(e)}}>${t}</button>`:s`<p>${t}</p>`}var rd=()=>!a.record.run.includes("/"),DD={day_before:"Cast beforehand",base_mixed:"Mixing",poured:"Pouring",topping_mixed:"Mixing",whipped:"Whipping",piped:"Piping",afterwards:"Pieces and time"},PD="unmoulded_on",mm="Cure and test";function OD(e){let t=[];for(let n of e){let o=t.at(-1),r=n.key===PD||o?.title===mm?mm:DD[n.when],l=n.of??"";o?.title===r&&o.of===l?o.blanks.push(n):t.push({title:r,of:l,blanks:[n]})}return t}function MD(e,t){let n=OD(t),o=s`<nav class="parts-of-record" aria-label="Parts of the record">
    ${n.map((i,r)=>s`<button type="button" @click=${()=>FD(r)}>${sy(i)}</button>`)}
  </nav>`;return s`${n.length>1?o:d} ${n.map((i,r)=>LD(e,i,r))} ${ny(e)}`}var sy=({title:e,of:t})=>t?`${e}: ${t}`:e,fm=e=>`record-part-${e}`;function FD(e){let t=document.getElementById(fm(e));t?.focus({preventScroll:!0}),t?.scrollIntoView({block:"start"})}var LD=(e,t,n)=>s`<section class="record-part" aria-labelledby=${fm(n)}>
    <h2 id=${fm(n)} tabindex="-1">${sy(t)}</h2>
    ${t.title===mm?BD(e):d} ${t.blanks.map(o=>CD(e,o))}
  </section>`,BD=({for_sale:e})=>e?d:s`<p class="aside">
        Nothing is for sale without a test: note how it was tested and what came of it, then the day from which it is
        ready, or why it is held back.
      </p>`,CD=(e,t)=>t.kind==="weighing"?oy(e,t):s`${id(e,t)} ${mc(t)?iy(e,t):d}`;var _m="base-title";function ay({order:e,words:t,planned:n,is_old:o}){let i=Ew(e,t);Jr({run:e,together:i}),ID();let r=Ci();return s`<section class="record of-base out" aria-labelledby=${_m}>
    <h2 id=${_m} tabindex="-1">What really happened: poured together (${i})</h2>
    <p class="aside">
      One base is mixed for these lines, and recorded as a whole. What becomes of their pieces is noted with each run.
    </p>
    ${t.length>1?ED(e,t,i):d} ${hm()}
    ${a.record.version===void 0?WD():s`${ND(n(i),o)} ${nd()}`}
    ${r?HD(r):d}
  </section>`}var WD=()=>a.record.failed===void 0?s`<p class="hint">Reading ...</p>`:d;function ID(){a.record.is_led_to&&requestAnimationFrame(()=>{Pe({is_led_to:void 0}),C(L(_m))})}var ED=(e,t,n)=>s`<div class="choice" role="group" aria-label="Poured together">
    ${t.map(o=>s`<button
          type="button"
          aria-pressed=${o===n?"true":"false"}
          @click=${()=>Xp(e,o)}
        >
          ${o}
        </button>`)}
  </div>`;function ND(e,t){return e?e.length?s`<ul class="to-begin">
    ${[...e].sort((n,o)=>n.number-o.number).map(n=>jD(n,e.length,t))}
  </ul>`:s`<p class="aside">Fewer than two of these lines are left to make.</p>`:s`<p class="hint">Which batches there are to begin is known once the order can be planned.</p>`}function jD({number:e,lines:t},n,o){let i=n>1?`batch ${e} of ${n}`:"the base",r=Vt(e),l=()=>C(L("base-head"));return s`<li>
    <p><b>${i[0].toUpperCase()}${i.slice(1)}</b>, for ${t.join(", ")}${r?d:": not begun"}</p>
    ${sm({number:e,words:i,is_struck:o,show:l},r?s`Another making than <b>${r.begun.code}</b>`:"Lye is mixed: begin the record")}
  </li>`}function HD(e){let{begun:t,lines:n}=e;return s`<div class="record-head" id="base-head" tabindex="-1">
      ${tr(e)}
      <p>${Rs(e)}</p>
      ${rd()?s`<button type="button" @click=${()=>Be(`batch ${t.code}`)}>What is in it</button>`:d}
    </div>
    ${am(e)}
    <h3>Poured from it</h3>
    <ul class="poured-lines">
      ${n.map(qD)}
    </ul>
    ${gm(e)}`}function qD({id:e,code:t,run:n,file:o,pieces:i}){let{run:r}=a.record,l=r.slice(0,r.lastIndexOf("/")+1)+o,u=a.files?.runs.some(c=>c.file===l);return s`<li>
    <span><b>${t}</b> ${n}, ${z(i,"piece")}</span>
    ${u?s`<button type="button" aria-label="Its record: ${t}" @click=${()=>{li(l,e)}}>
            Its record
          </button>`:d}
  </li>`}var UD=300,zD=1e3,ly=()=>new Date().toDateString(),KD=()=>({file:a.run.file,run:a.run.now});function JD(){let{run:e,plan:t}=a;return{known:a.run_days,rests_on:()=>[a.plan,ly()],is_ready:t!==void 0&&!a.is_old,written:()=>Promise.resolve(),question:()=>a.planned??KD(),is_open:()=>e===a.run,keep:n=>f({run_days:n})}}function VD(){let{order:e}=a;if(!e)return;let{open:t}=e;return{known:e.days,rests_on:()=>[t.now,t.file,a.plan,Jo(),a.recorded,ly()],is_ready:mn(t.now)&&!t.theirs&&!a.is_old,written:async()=>{await rt(),await ht(),await Ri(),await Ja()},question:()=>({file:t.file,order:t.now}),is_open:()=>e===a.order,keep:n=>v(e,{days:n})}}var sd=e=>e==="run"?JD():VD(),dy=e=>sd(e).question(),uy=(e,t)=>e!==void 0&&e.length===t.length&&e.every((n,o)=>n===t[o]);function nr(e){let t=sd(e);if(!t)return{is_old:!0};let{known:n,is_ready:o}=t,i=uy(n?.of,t.rests_on());!i&&o&&QD(e,t);let r=i?n?.complaint:void 0;return{days:n?.days,complaint:r,is_old:!o||!i||r!==void 0}}function wm(e){let t=sd(e);t?.known&&t.keep({...t.known,of:[]})}var $m=new Map,bm=new Set;function QD(e,t){let n=t.rests_on(),o=$m.get(e);bm.has(e)||uy(o?.of,n)||(window.clearTimeout(o?.timer),$m.set(e,{of:n,timer:window.setTimeout(()=>{GD(e)},t.known?UD:0)}))}async function GD(e){$m.delete(e);let t=sd(e);if(t?.is_ready){bm.add(e);try{await t.written(),await YD(e,t)}catch(n){if(!(n instanceof w))throw n}finally{bm.delete(e),f({})}}}async function YD(e,{known:t,rests_on:n,question:o,is_open:i,keep:r}){let l=n();try{let u=await jf(o());i()&&r({of:l,days:u})}catch(u){if(!(u instanceof w))throw u;if(!i())return;r({of:l,days:t?.days,complaint:u.complaint}),u.may_pass&&window.setTimeout(()=>i()&&wm(e),zD)}}var Tm=864e5,To=e=>Math.round(Date.parse(`${e}T00:00Z`)/Tm),cy=e=>new Date(e*Tm).toISOString().slice(0,10),ZD=e=>new Date(e*Tm).getUTCDay()===1,vm=40,km=18,XD=7,xm=class{#n;#e;constructor({calendar:t}){this.#n=To(t[0].day),this.#e=t.length}at=(t,n=0)=>`${this.#t(To(t)+n)}%`;wide=t=>`${(100*t/this.#e).toFixed(3)}%`;#t=t=>(100*(t-this.#n)/this.#e).toFixed(3);mondays(){let t=Array.from({length:this.#e},(n,o)=>this.#n+o).filter(ZD);return t.filter((n,o)=>o%Math.ceil(t.length/XD)===0).map(cy)}is_at_end=t=>To(t)-this.#n>.88*this.#e};function py(e){let t=new xm(e),{calendar:n}=e;return s`<figure class="day-strip">
    <p class="aside">${xe(n[0].day)} to ${xe(n.at(-1).day)}</p>
    ${ym(e,t,20,oP(t))}
    <p>Hours of your making days</p>
    ${ym(e,t,vm+2,iP(e,t))}
    ${e.batches.map(o=>s`<p>${dP(e,o)}</p>
          ${ym(e,t,km+6,rP(e,t,o))}`)}
    <figcaption>${cP(e)}</figcaption>
  </figure>`}var ym=(e,t,n,o)=>s`<svg width="100%" height=${n} aria-hidden="true">
    ${R`${eP} ${nP(e,t)}
      ${t.mondays().map(i=>R`<line class="week" x1=${t.at(i)} x2=${t.at(i)} y1="0" y2="100%" />`)}
      ${o}
      ${tP(e).map(i=>R`<line class="due" x1=${t.at(i)} x2=${t.at(i)} y1="0" y2="100%" />`)}`}
  </svg>`,eP=R`<defs>
  <pattern id="day-mould" width="8" height="8" patternUnits="userSpaceOnUse"><path d="M0 0L8 8M8 0L0 8" /></pattern>
  <pattern id="day-cure" width="6" height="6" patternUnits="userSpaceOnUse"><circle cx="3" cy="3" r="1" /></pattern>
  <pattern id="day-off" width="7" height="7" patternUnits="userSpaceOnUse"><path d="M0 7L7 0" /></pattern>
</defs>`,tP=({days:e})=>e.filter(({acts:t})=>t.some(({act:n})=>n==="due")).map(({day:t})=>t),nP=({calendar:e},t)=>e.filter(({off:n})=>n).map(({day:n})=>R`<rect class="off" x=${t.at(n)} width=${t.wide(1)} height="100%" />`),oP=e=>e.mondays().filter(t=>!e.is_at_end(t)).map((t,n)=>R`<text class=${n%2?"between":""} x=${e.at(t)} dx="3" y="14">${v$(t)}</text>`);function iP({calendar:e},t){let n=Math.max(...e.map(({hours_min:i})=>i)),o=(i,r,l)=>{let u=vm*l/n;return R`<rect class=${i} x=${t.at(r,.1)} width=${t.wide(.8)} y=${1+vm-u} height=${u} />`};return e.filter(({hours_min:i})=>i>0).map(({day:i,hours_min:r,used_min:l})=>R`${o("free",i,r)} ${o("used",i,l)}`)}function rP(e,t,n){let{poured:o,unmoulded:i,cured:r}=n,l=(p,m,_)=>{let b=To(_)-To(m);return R`<rect class=${p} x=${t.at(m)} y="3" width=${t.wide(b)} height=${km} />`},u=o===i,c=(p,m)=>lP(e,p,n).map(_=>R`<circle class=${p} cx=${t.at(_,.5)} cy=${3+km/2} r=${m} />`);return R`${l("mould",o,u?cy(To(o)+1):i)}
    ${To(i)<To(r)?l("cure",i,r):d}
    ${c("chill",7)} ${c("cast",3.5)}`}var sP=({of:e,runs:t,batches:n},o)=>e===o.of&&t.join()===o.runs.join()&&n.includes(o.batch),aP=({lyes:e},t)=>e.filter(({batches:n})=>n.some(({of:o,runs:i,batch:r})=>o===t.of&&i.join()===t.runs.join()&&r===t.batch)).map(({made:n})=>n);function lP(e,t,n){let o=e.days.filter(({acts:i})=>i.some(r=>r.act===t&&sP(r,n)));return[...new Set([...o.map(({day:i})=>i),...t==="chill"?aP(e,n):[]])]}function dP({asked:e,batches:t},n){let o=({of:l,runs:u})=>l===n.of&&u.join()===n.runs.join(),i=e[n.of].lines.find(({runs:l})=>l.join()===n.runs.join())?.name??"",r=t.filter(o).length;return`${i}${r>1?`, batch ${n.batch} of ${r}`:""}: ${n.pieces} ${n.pieces===1?"piece":"pieces"}`}var uP=(e,t)=>s`<span><svg width="26" height="20" aria-hidden="true">${e}</svg> ${t}</span>`,Ds=e=>R`<rect class=${e} x="1" y="1" width="24" height="18" />`;function cP({calendar:e,days:t}){let n=i=>t.some(({acts:r})=>r.some(({act:l})=>l===i));return[[!0,Ds("used"),"hours used"],[!0,Ds("free"),"hours free"],[!0,Ds("mould"),"in the mould"],[!0,Ds("cure"),"curing"],[e.some(({off:i})=>i),Ds("off"),"day off"],[n("cast"),R`<circle class="cast" cx="13" cy="10" r="3.5" />`,"decorations cast"],[n("chill"),R`<circle class="chill" cx="13" cy="10" r="7" />`,"weighed out the evening before"],[!0,R`<line class="due" x1="13" x2="13" y1="0" y2="100%" />`,"ready to hand over"]].filter(([i])=>i).map(([,i,r])=>uP(i,r))}var di=e=>["/work",e].join("/");function ad(e=!1){let t=(n,o,i,r=!1)=>h({of:"studio",label:o,at:di(n),unit:i,optional:!0,takes_part:!0,is_due:r,short:!0});return[t("each_batch","Each batch","min",e),t("each_piece_made","Each piece made","s"),t("each_tray_fill","Each tray fill","min"),t("each_piece_packed","Each piece packed","s")]}var pP=({cautions:e})=>e.filter(({severity:t})=>t!=="danger").map(({severity:t,text:n})=>t==="note"?s`<p>${Te(n)}</p>`:s`<p class="minded"><strong>Caution</strong> ${Te(n)}</p>`),Ps=(e,t,n="")=>s`<tr>
    <th scope="row">${e}</th>
    <td><b>${x(t)}</b></td>
    <td>${n}</td>
  </tr>`;function mP(e){let{units:t}=a,{made:n,for:o,lye_of:i,pot:r}=e,l=r.full_pot_g===null?"":`with its pot ${x(X(t,{g:r.full_pot_g,g_text:r.full_pot_g_text,oz_text:r.full_pot_oz_text}))}`;return s`<h3>One pot of lye solution, made on the evening of ${xe(n)}</h3>
    <p>
      For ${i==="topping"?"the toppings of ":""}${Te(o)};
      ${S(r.strength_percent,1)} % strong. In place of the lye in the plan of each.
    </p>
    <table class="figures">
      <tbody>
        ${Ps("Water, distilled",X(t,ae(r,"water_")))}
        ${r.alkalis.map(u=>Ps(u.name,X(t,ae(u,""),"down")))}
        ${Ps("Lye solution in the pot",X(t,ae(r,"lye_")),l)}
        ${r.shares.map(u=>s`${Ps(`Out of it for ${u.batter}`,X(t,ae(u,"lye_"),"down"),`superfat then ${lt(u.superfat_percent)}`)}
            ${u.top_up_g>0?Ps(`and plain water to ${u.batter}`,X(t,ae(u,"top_up_"))):d}`)}
      </tbody>
    </table>
    ${pP(e)}`}var my=({lyes:e})=>e.map(mP),fy=({lyes:e,notes:t})=>[...new Set([...e.flatMap(({cautions:n})=>n),...t].filter(({severity:n})=>n==="danger").map(({text:n})=>n))];var ui,Os="",fP=2**20,hy=e=>ui?.of===e.file?{...e,since:{name:ui.name,text:ui.text}}:e;function gy(e){let t=async n=>{let o=n.target;await gP(e,o.files?.[0]),o.value=""};return s`<div class="earlier-calendar">
    <div class="field">
      <label for="earlier-calendar">The calendar that you exported before (.ics)</label>
      <input
        id="earlier-calendar"
        type="file"
        accept=".ics,text/calendar"
        aria-describedby="earlier-calendar-said"
        @change=${n=>{t(n)}}
      />
      <p id="earlier-calendar-said" class=${Os?"complaint":"hint"}>
        ${Os||"Choose it, if there is one: what it has and the days have no more then goes from your calendar too."}
      </p>
    </div>
    ${ui?.of===e?hP(ui):d}
  </div>`}var hP=({name:e})=>s`<p role="status">
    The calendar file will cancel what only <b>${e}</b> has.
    <button type="button" @click=${()=>_P(e)}>Leave ${e} out</button>
  </p>`;async function gP(e,t){t&&(Os=t.size>fP?`${t.name} is too large for a calendar of this program.`:"",ui=Os?void 0:{of:e,name:t.name,text:await t.text()},D(Os||`${t.name} is taken into account.`))}function _P(e){ui=void 0,D(`${e} is left out.`),Q()}var ci=e=>v(a.printing,e);function _y(e,t){let n=document.createElement("a");n.href=e,t(n),n.click()}async function $y(e){if(!a.printing.is_working){ci({is_working:!0,told:"Making it ...",on:a.view});try{await $P(),ci({told:await e()})}catch(t){ci({told:t instanceof Error?t.message:String(t)})}ci({is_working:!1})}}async function $P(){await rt(),await ht();let e=a.view==="order"?a.order?.open:void 0,t=Bn("run")??(e?.theirs&&e);if(t)throw new Error(`${t.file} was changed outside this page: choose first which version to keep.`)}var Tn=()=>a.printing.on===a.view?a.printing.told:"",Ue=(e,t)=>()=>$y(async()=>{let n=URL.createObjectURL(await dn(t));return _y(n,o=>o.download=e),window.setTimeout(()=>URL.revokeObjectURL(n),6e4),`${e} is in your downloads.`}),ld=e=>()=>$y(async()=>(_y(await Kf(e),t=>Object.assign(t,{target:"_blank",rel:"noopener"})),"It is open in a tab of its own: print it there at 100 %, not fitted to the page.")),bP=e=>{ci({paper:e}),localStorage.setItem("paper",e)},dd=()=>ce("Paper",a.printing.paper,[["A4","A4"],["Letter","Letter"]],bP),Fe=(e,t,n="",o=!1)=>s`<button
    type="button"
    class=${n}
    ?disabled=${a.printing.is_working||o}
    @click=${()=>{t()}}
  >
    ${e}
  </button>`,Rn=({words:e,kind:t,file:n,of:o,is_asleep:i},r="")=>s`${Fe(`${e}, to print`,ld({kind:t,...o}),r,i)}
  ${a.files?.makes_pdf?Fe(`${e}, PDF`,Ue(`${n}.pdf`,{kind:`${t}-pdf`,...o}),"",i):""}`,Sn=e=>e.split("/").at(-1).replace(/(\.(run|order))?\.json$/,"");var An={run:"/money/currency",studio:"/currency"},ud={run:"/money/prices",studio:"/prices"},sn=()=>bn(An)!==void 0;function or(){let[e,t]=[g("run",An.run),g("studio",An.studio)];return e!==void 0&&t!==void 0&&e!==t?[]:[An,ud]}var cd=()=>O("studio",An.studio)||String(bn(An)??"");async function by(e,t=""){if(e==="run"||!a.order)return;let{open:n}=a.order,o=gt(n.now).map(({run:r})=>At(n.file,r)),i=o.find(r=>pd(r,t))??o[0];(!o.includes(a.run.file)||o.some(r=>pd(r,t)))&&await Nn(i,"set-up")}var pd=(e,t)=>e!==""&&(e===t||t.endsWith(`/${e}`)),wy=e=>{requestAnimationFrame(()=>requestAnimationFrame(e))};function Ms(e,t){for(let n=t;n;n=n.slice(0,n.lastIndexOf("/"))){let o=document.getElementById(Y(e,n));if(o)return o}}var yy=(e,t)=>{ue("set-up studio"),Ge("studio",e),Xe("set-up"),wy(()=>nt(Ms("studio",t)))};async function vy(e){await by(e),le()||await Pa(),yy("days","/days/making/monday")}var wP=["order","run","pour","pipe","studio"];async function md(e,{file:t,field:n}){if(e==="order"&&pd(a.order.open.file,t))return nt(Ms("order",n));await by(e,t);let o=wP.find(i=>pd(ao(i)?.file??"",t));if(o==="pour"||o==="pipe")at(o);else{if(o==="studio")return yy(n.startsWith("/work")&&sn()?"money work":"days",n);if(Ms("run",n))return nt(Ms("run",n));Xe("set-up")}wy(()=>nt(Ms(o??"run",n)))}function fd(e){let{days:t,complaint:n,is_old:o}=nr(e);return s`<section class="piece days" aria-labelledby="days-title">
    <h2 id="days-title">When it is made</h2>
    ${n?yP(e,n):d}
    ${t?s`<div class=${o?"old":""}>${vP(e,t)}</div>
            ${LP(e,o)}`:n?d:s`<p class="hint" role="status">Asking when it is made ...</p>`}
  </section>`}function yP(e,t){let{field:n,is_fault:o}=t;return o?s`<p class="alarm" role="status">${B(t)}</p>
      <button type="button" @click=${()=>wm(e)}>Ask again</button>`:["/days","/days/making"].includes(n)||e==="run"&&!le()?s`<p role="status">
        Your making days are not known yet: say on which weekdays you make soap, and for how long.
      </p>
      <button type="button" class="strong" @click=${()=>{vy(e)}}>To my making days</button>`:["/work",di("each_batch")].includes(n)?s`<p role="status">
        How long a batch takes you is not known yet, and so not how many of them a day holds.
      </p>
      <button
        type="button"
        class="strong"
        @click=${()=>{md(e,{...t,field:di("each_batch")})}}
      >
        To the time of a batch
      </button>`:s`<p class="alarm" role="status">${Jn(n)}${Te(B(t))}</p>
    ${n?s`<button type="button" @click=${()=>{md(e,t)}}>Go to the field</button>`:d}`}var vP=(e,t)=>s`${MP(t)} ${xP(e,t)} ${kP(t)} ${py(t)} ${SP(e,t)}
  ${my(t)} ${PP(t)} ${OP(t)} ${FP(e,t)}`,kP=({asked:e})=>e.flatMap(({ready:t})=>(t?.lines??[]).filter(({text:n})=>n).map(({text:n})=>s`<p><b>${n}</b></p>`)),Rm=(e,t,n)=>s`<small>${e?t:n}</small>`;function xP(e,t){let{kept:n,promise:o,promise_proved:i,from:r}=t;return n===null?s`<p class="when">
        Begun today, ${xe(r)}, promise it for <b>${xe(o)}</b>.
        ${Rm(i,"No earlier day can be kept.","The search ended here: an earlier day may be possible.")}
      </p>
      <button type="button" @click=${()=>nt(document.getElementById(Y(e,"/due")))}>
        Give it a due day
      </button>`:n?TP(t):RP(t)}function TP({asked:e,latest_start:t,latest_start_proved:n,promise:o,promise_proved:i}){let[{due:r,pieces:l,last_making_day:u}]=e;return s`<p class="when">
      Begin on <b>${xe(t)}</b> at the latest to have ${z(l,"piece")} by
      <b>${xe(r)}</b>.
      ${Rm(n,"A later start does not keep it.","The search ended here: a later start may be possible.")}
    </p>
    ${u?s`<p>The last day to pour any of it is ${xe(u)}.</p>`:d}
    <p>
      Begun today, all of it can be ready by ${xe(o)}.
      ${i?d:s`<small>The search ended here: an earlier day may be possible.</small>`}
    </p>`}function RP({asked:e,in_time_proved:t}){let n=({pieces:o,in_time:i,due:r,rest_on:l})=>i?s`${i} of ${z(o,"piece")} by ${xe(r)}, the rest on <b>${xe(l)}</b>.`:s`none of the ${z(o,"piece")} by ${xe(r)}, all of them on <b>${xe(l)}</b>.`;return s`${e.filter(({kept:o})=>o===!1).map(o=>s`<p class="alarm when">
            <strong><span aria-hidden="true">⚠</span> The due day cannot be kept:</strong> ${n(o)}
          </p>`)}
    <p>
      ${Rm(t,"No more can be in time, and the rest is ready no earlier.","The search ended here: more may be possible.")}
    </p>`}var SP=(e,{days:t})=>s`<details ?open=${e==="run"}>
    <summary>Day by day</summary>
    <ol class="by-day">
      ${t.map(n=>s`<li>
            <h3>${xe(n.day)} <small>${AP(n)}</small></h3>
            <ul>
              ${n.acts.map(DP)}
            </ul>
          </li>`)}
    </ol>
  </details>`,AP=({hours_min:e,used_min:t,off:n})=>n?"day off":e&&t?`${dl(t)} of ${dl(e)}`:"",DP=({text:e,min:t,caution:n})=>s`<li>
    ${Te(e)}${t?s` <small>${dl(t)}</small>`:d}
    ${n?s`<p class="minded"><strong>Caution</strong> ${n}</p>`:d}
  </li>`;function PP({what_if:e,kept:t}){if(!e.length)return s`<h3>What sets the date</h3>
      <p>No wider limit that was tried makes it earlier: the time to cure and to pack does.</p>`;let n=({keeps_due:o,latest_start:i,promise:r,proved:l})=>[o&&!t?"keeps the due day, ":"",o?`begin on ${xe(i)} at the latest`:`ready by ${xe(r)}`,l?"":" (the search ended there)"].join("");return s`<h3>${t===!1?"What would help":"What limits it"}</h3>
    <p class="hint">Each was planned with that change alone.</p>
    <ul class="limits">
      ${e.map(o=>s`<li>${o.text}: <b>${n(o)}</b></li>`)}
    </ul>`}function OP({extras:e}){return e.length?s`<h3>From base that is left over</h3>
    <p class="hint">Not counted above.</p>
    <ul class="limits">
      ${e.map(({run:t,batch:n,mould:o,cavities:i})=>s`<li>Batch ${n} of ${t} fills ${z(i,"cavity","cavities")} of ${o}</li>`)}
    </ul>`:d}function MP(e){let t=fy(e);return t.length?s`<div class="dangers">
    ${t.map(n=>s`<p class="danger"><strong>${$t}</strong> ${Te(n)}</p>`)}
  </div>`:d}function FP(e,{notes:t,studio:n}){let o=t.filter(({severity:l})=>l!=="danger"),i=({severity:l,text:u})=>l==="note"?s`<p>${Te(u)}</p>`:s`<p class="minded"><strong>Caution</strong> ${Te(u)}</p>`,r=({field:l})=>l?s`<button type="button" @click=${()=>{md(e,{file:n,field:l})}}>Say it</button>`:d;return o.length?s`<h3>To mind</h3>
        ${o.map(l=>s`<div class="day-note">${i(l)} ${r(l)}</div>`)}`:d}function LP(e,t){let n=dy(e),o=Sn(n.file),i={plan:n,paper:a.printing.paper,"with-days":!0};return s`<section class="on-paper" aria-labelledby="days-papers">
    <h3 id="days-papers">In a calendar, on paper</h3>
    <div class="choice">
      ${Fe("Calendar file (.ics)",Ue(`${o} days.ics`,{kind:"calendar",days:hy(n)}),"",t)}
      ${Rn({words:"Days and bench sheet",kind:"sheet",file:`${o} days and sheet`,of:i,is_asleep:t})}
      ${Fe("Table of the days (.csv)",Ue(`${o} days.csv`,{kind:"days-csv",days:n}),"",t)}
    </div>
    <p class="hint">Taken into a calendar again, its entries move with the days.</p>
    ${gy(n.file)}
    <p role="status">${Tn()}</p>
  </section>`}var Ro=e=>(t,n,o="")=>s`<tr class=${o}>
      <th scope="row">${t}</th>
      ${e.map(i=>s`<td><b>${n(i)}</b></td>`)}
    </tr>`,Fs=(e,t)=>s`<tr class="group">
    <th scope="rowgroup" colspan=${t.length+1}>${e}</th>
  </tr>`;function Ls(e,t,n,o){let i=`quote ${t}`,r=a.open.has(i),l=`quote-${t.replaceAll(/\W/g,"-")}`,u=s`<button
    type="button"
    class="line"
    aria-expanded=${r?"true":"false"}
    aria-controls=${r?l:d}
    @click=${()=>He("open",i)}
  >
    ${t}<span class="how" aria-hidden="true">${r?"\u2013":"="}</span>
  </button>`;return s`${Ro(e)(u,n)}
  ${r?s`<tr class="opened">
          <td colspan=${e.length+1} id=${l}>${e.map(o)}</td>
        </tr>`:d}`}var Bs=(e,t)=>s`<div class="sum">
    <table>
      <caption>
        ${e}
      </caption>
      <tbody>
        ${t}
      </tbody>
    </table>
  </div>`;function hd({parts:e,items:t},n){let o=e.find(i=>i.part===n);return o?t.some(i=>i.part===n&&i.cost!==null&&!i.from_tap)?o.each:"unpriced":"\u2013"}var gd=(e,{items:t},n)=>Bs(e,t.filter(o=>o.part===n).map(({name:o,amount:i,cost:r,how:l})=>s`<tr>
            <th scope="row">${o}</th>
            <td>${r??"unpriced"}</td>
            <td>${l||i}</td>
          </tr>`)),_d=(e,t)=>Ls(e,"To lay out now, in whole packs",({cash:n})=>n?.total??"nothing",n=>s`${BP(t(n),n.cash)} ${CP(n.cash)}`),BP=(e,t)=>s`${Bs(`Packs to buy, ${e}`,(t?.packs??[]).map(({shown_as:n,count:o,holds:i,sum:r,seller:l})=>s`<tr>
          <th scope="row">${n}</th>
          <td>${r}</td>
          <td>${o} × ${i}${l?`, ${l}`:""}</td>
        </tr>`))}
  ${t?.unpriced.length?s`<p class="alarm">No pack is listed, and not in the sum: ${t.unpriced.join(", ")}.</p>`:d}
  ${t&&!t.proved_cheapest?s`<p class="hint">Not proved to be the least that is possible.</p>`:d}`,CP=e=>Bs("Left of them when all is made",(e?.left??[]).map(({shown_as:t,left:n})=>s`<tr>
          <th scope="row">${t}</th>
          <td>${n}</td>
        </tr>`));function Cs(e){let t=e.flatMap(({prices:n})=>n);return t.filter((n,o)=>t.findIndex(({way:i})=>i===n.way)===o)}var ky=e=>`${S(e,1)} %`;function WP(e){return"margin_percent"in e?`margin ${S(e.margin_percent,2)} %`:"markup_percent"in e?`markup ${S(e.markup_percent,2)} %`:"price as set"}var Sm=(e,t)=>({prices:n})=>{let o=n.find(i=>i.way===e);return o?t(o):"\u2013"};function $d(e,t,{way:n,by:o,ask:i,with_tax:r},l,u=d){let c=i===r,p=Ro(e),m=b=>Sm(n,b),_=(b,y)=>l?s`${y} ${wo(b)}`:y;return s`<tbody>
    ${Fs(s`<span class="way">${n}</span>, ${WP(o)}`,e)} ${u}
    ${p(t?c?"Ask, with tax":"Ask, without tax":"Ask",m(Am),"ask")}
    ${t?p("tax in it",m(({tax:b})=>c?b:"none")):d}
    ${p("fees",m(({fees:b})=>b))}
    ${p("left for you",m(({profit:b})=>b))}
    ${p(_("margin","margin, of the price"),m(b=>ky(b.margin_percent)))}
    ${p(_("markup","markup, on the cost"),m(b=>ky(b.markup_percent)))}
  </tbody>`}var Am=({ask:e,is_below_cost:t})=>t?s`<span class="below">${e}<small>below cost</small></span>`:e;function bd(e,t){let n=o=>e.filter(({prices:i})=>i.some(r=>r.way===o&&r.is_below_cost));return Cs(e).map(({way:o})=>({way:o,sold:n(o)})).filter(({sold:o})=>o.length).map(({way:o,sold:i})=>s`<p class="alarm below-cost">
          <strong><span aria-hidden="true">⚠</span> Below cost</strong> ${o}: ${t(i)}
        </p>`)}var Ws=e=>e===1?"once":`${e} times`;function xy({times:e,currency:t,has_tax:n},o){let i=Ro(e);return s`<p class="aside">Money in ${t}${n?"; costs are without tax":""}.</p>
    <div class="side-by-side" role="region" tabindex="0" aria-label="Costs and prices of the order">
      <table class="quote-table ${o?"old":""}">
        <thead>
          <tr>
            <th scope="col">The order, made</th>
            ${e.map(r=>s`<th scope="col"><b>${Ws(r.times)}</b></th>`)}
          </tr>
        </thead>
        <tbody>
          ${i("pieces",({pieces:r})=>r)}
        </tbody>
        ${IP(e)}
        <tbody>
          ${Fs(wd(e)?"All made anew it would cost":"It costs",e)}
          ${e[0].lines.map((r,l)=>NP(e,l))} ${i("The whole order",({cost:r})=>r,"sum-of")}
        </tbody>
        <tbody>
          ${_d(e,r=>`made ${Ws(r.times)}`)}
        </tbody>
        ${Cs(e).map((r,l)=>$d(e,n,r,l===0,qP(e,r.way)))}
      </table>
    </div>`}var wd=e=>e.some(({ready:t})=>t.lines.some(({text:n})=>n!==""));function IP(e){if(!wd(e))return d;let t=Ro(e),n=o=>({ready:i})=>i.lines.reduce((r,l)=>r+l[o],0);return s`<tbody>
    ${t("delivered",n("delivered"))} ${t("made already",n("taken"))} ${t("to make",n("to_make"))}
    ${t("What is left to make costs",({rest:o})=>o?o.cost:"nothing")}
    ${t("Materials of what is made already did cost",({ready:o})=>EP(o))}
  </tbody>`}function EP({cost:e,costs_unknown:t}){if(!e)return"nothing is taken";if(!e.materials.length)return"not known";let n=e.materials.map(({amount:o,currency:i})=>`${o} ${i}`).join(" + ");return e.unpriced.length||t.length?`more than ${n}`:n}var Dm=({run:e,sell:t})=>`${e??""}, ${t} ${t===1?"piece":"pieces"}`,NP=(e,t)=>Ls(e,Dm(e[0].lines[t]),({lines:n})=>n[t].cost,({lines:n})=>s`${jP(n[t])} ${n[t].parts.map(({part:o})=>HP(n[t],o))}`),jP=e=>Bs(`A piece of ${Dm(e)}, ${e.make} made`,[...e.parts.map(({part:t})=>[t,hd(e,t)]),["Cost of a piece",e.cost_each]].map(([t,n])=>s`<tr>
          <th scope="row">${t}</th>
          <td>${n}</td>
        </tr>`)),HP=(e,t)=>gd(`${t} of all of them, ${Dm(e)}`,e,t),qP=(e,t)=>e[0].lines.map(({run:n},o)=>Ro(e)(`${n??""}, a piece`,({lines:i})=>Sm(t,Am)(i[o]))),Ty=({times:e})=>bd(e,t=>`the order loses money, made ${t.map(n=>Ws(n.times)).join(", ")}.`);function Ry({times:e}){let t=e.flatMap(({together:o})=>o.flatMap(({cautions:i})=>i)),n=e.flatMap(({lines:o})=>o.flatMap(({run:i,dangers:r})=>r.map(l=>`${i??""}: ${l}`)));return n.push(...t.filter(({severity:o})=>o==="danger").map(({text:o})=>o)),n.length?s`<div class="dangers">
    ${[...new Set(n)].map(o=>s`<p class="danger"><strong>${$t}</strong> ${o}</p>`)}
  </div>`:d}function Sy({times:e,remarks:t=[]}){let[{together:n,lines:o}]=e,i=n.flatMap(({cautions:r})=>r).filter(({severity:r})=>r!=="danger");return!n.length&&!t.length?d:s`<ul class="limits">
    ${n.map(r=>s`<li>
          <b
            >Poured together (${r.word}): ${Ne(r.lines.map(l=>o[l].run??""))} from one base,
            "${r.formula}", ${x(H(a.units,r.make_g))} in
            ${z(r.batches.reduce((l,{count:u})=>l+u,0),"batch","batches")}.</b
          >
        </li>`)}
    ${i.map(({text:r})=>s`<li>${r}</li>`)} ${t.map(r=>s`<li>${r}</li>`)}
  </ul>`}function UP(e){return e.length<2?e[0]?.way:e.find(({way:t})=>t===a.printing.way)?.way}function yd({file:e,question:t,prices:n,is_old:o}){let i=Sn(e),r=UP(n),l={quote:n.length>1&&r?{...t,way:r}:t},u=n.map(p=>[p.way,p.way]),c={buy:{files:[e]}};return s`<section class="on-paper" aria-labelledby="quote-papers">
    <h3 id="quote-papers">On paper</h3>
    ${u.length>1?s`<p class="question">The price that is offered</p>
            ${ce("The price that is offered",r,u,p=>v(a.printing,{way:p}))}`:d}
    <div class="choice">
      ${n.length?Rn({words:"Offer",kind:"offer",file:`${i} offer`,of:l,is_asleep:o||!r}):d}
      ${Rn({words:"All of it, for you",kind:"quote",file:`${i} costs`,of:{quote:t}})}
      ${a.files?.studios.length?s`${Rn({words:"Shopping list",kind:"list",file:`${i} to buy`,of:c})}
            ${Fe("Shopping list, table",Ue(`${i} to buy.csv`,{kind:"list-csv",...c}))}`:d}
    </div>
    ${n.length?r?d:s`<p class="hint">An offer has one price: choose which.</p>`:s`<p class="hint">Nothing can be offered before there is a price for it.</p>`}
    <p role="status">${Tn()}</p>
  </section>`}var Pm=class extends HTMLElement{#n;#e="";#t="";#i="";#o=new IntersectionObserver(([t])=>t.isIntersecting&&void this.#l(),{rootMargin:"200px"});connectedCallback(){this.#r()}disconnectedCallback(){this.#o.disconnect(),this.#s()}set words(t){this.#e=t}set question(t){JSON.stringify(t)!==JSON.stringify(this.#n)&&(this.#n=t,this.#s(),this.#a(),this.#r())}#r(){this.#o.disconnect(),this.isConnected&&this.#o.observe(this)}#s(){this.#t&&URL.revokeObjectURL(this.#t),[this.#t,this.#i]=["",""]}async#l(){this.#o.disconnect();let t=this.#n,[n,o]=await zP(t);if(t!==this.#n||!this.isConnected)return URL.revokeObjectURL(n);[this.#t,this.#i]=[n,o],this.#a()}#a(){let t=this.#i||"Drawing ...";St(this.#t?s`<img src=${this.#t} alt=${this.#e} />`:s`<p class="hint">${this.#n?t:d}</p>`,this)}};async function zP(e){try{return[URL.createObjectURL(await dn({kind:"picture",quote:e})),""]}catch(t){if(!(t instanceof w))throw t;return["",t.message]}}customElements.define("cost-picture",Pm);function Ay(e,t){let{costs:n,currency:o}=e;if(!n.length)return d;let[i,r]=[n[0],n.at(-1)],l=({sell:u,each:c})=>`${c} ${o} at ${u}`;return s`<section class="cost-picture" aria-labelledby="cost-picture">
    <h3 id="cost-picture">A piece's cost, by how many are made</h3>
    <div class="side-by-side" role="region" tabindex="0" aria-label="Picture of the cost of a piece">
      <cost-picture
        .words=${`Cost of a piece against the pieces sold, from ${l(i)} to ${l(r)}, and where the money of a piece goes. The figures stand below.`}
        class=${t?"old":""}
        .question=${t?Je:Yl()}
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
          ${KP(e).map(({sell:u,each:c})=>s`<tr>
                <th scope="row">${u}</th>
                <td>${c}</td>
              </tr>`)}
        </tbody>
      </table>
    </details>
  </section>`}function KP({costs:e,numbers:t,steps:n}){let o=new Set([...t.map(({sell:i})=>i),...n.flatMap(({sell:i})=>[i-1,i]),e[0].sell,e.at(-1).sell]);return e.filter(({sell:i})=>o.has(i))}var Dy=({sell:e})=>`${e} to sell`;function Py({numbers:e,currency:t,has_tax:n},o){let i=Ro(e);return s`<p class="aside">Money in ${t}${n?"; costs are without tax":""}.</p>
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
          ${e.some(r=>r.to_stock)?i("beyond those, at no cost",r=>r.to_stock):d}
        </tbody>
        <tbody>
          ${Fs("A piece costs",e)} ${JP(e).map(r=>VP(e,r))}
          ${i("Cost of a piece",r=>r.cost_each,"sum-of")} ${i("The whole run",r=>r.cost)}
        </tbody>
        <tbody>
          ${_d(e,Dy)}
        </tbody>
        ${Cs(e).map((r,l)=>$d(e,n,r,l===0))}
      </table>
    </div>`}var JP=e=>[...new Set(e.flatMap(({parts:t})=>t.map(({part:n})=>n)))],VP=(e,t)=>Ls(e,t,n=>hd(n,t),n=>gd(`${t} of the whole run, ${Dy(n)}`,n,t)),Oy=({numbers:e})=>bd(e,t=>`each piece sold loses money, at ${t.map(({sell:n})=>n).join(", ")} to sell.`);function My(){return s`<section class="piece quote" aria-labelledby="quote-title">
    <h2 id="quote-title">What it costs, what to ask</h2>
    ${sn()?GP():QP()}
  </section>`}var QP=()=>s`<p class="hint">Once it is known what you paid for the materials, it stands here what a piece costs.</p>
    <button type="button" @click=${()=>Om()}>To the prices paid</button>`;function Om(e,t="lane-studio"){ue("set-up studio"),e&&Ge("studio",e),Xe("set-up"),requestAnimationFrame(()=>C(L(t)))}function GP(){let{quote:e,complaint:t,is_old:n}=Ql();return s`${e?s`${YP(e)} ${Oy(e)}`:d}
    <div class="row">${eO(t)}</div>
    ${Mm()?d:Fm(e?.currency,t)} ${t?XP(t):d}
    ${e?iO(e,n):t?d:s`<p class="hint" role="status">Asking what it costs ...</p>`}`}function YP({numbers:e}){let t=[...new Set(e.flatMap(o=>o.dangers))];if(!t.length)return d;let n=o=>e.filter(i=>i.dangers.includes(o)).map(i=>i.sell);return s`<div class="dangers">
    ${t.map(o=>s`<p class="danger"><strong>${$t}</strong> ${n(o).join(", ")} to sell: ${o}</p>`)}
  </div>`}var ZP=["sell","margin","markup","price"],ir=(e,t)=>e?.file===""&&e.field===t?B(e):void 0;function XP(e){return ZP.some(t=>ir(e,t))?d:s`<p class="alarm" role="status">${Jn(e.field)}${B(e)}</p>
    ${e.is_fault?s`<button type="button" @click=${Vp}>Ask again</button>`:e.field.startsWith("/")?s`<button type="button" @click=${qp}>Go to the field</button>`:d}
    ${jp(e)}`}function vd({id:e,label:t,unit:n,value:o,hint:i,complaint:r,take:l,left:u}){return s`<div class="field ${r?"wants":""}">
    <label for=${e} data-said=${n??d}>${t}</label>
    <input
      id=${e}
      .value=${P(o)}
      @input=${c=>l(c.target.value)}
      @blur=${()=>u?.()}
      autocomplete="off"
      spellcheck="false"
      aria-invalid=${r?"true":"false"}
      aria-describedby=${r||i?`${e}-said`:d}
    />
    ${be(e,r,i)}
  </div>`}function eO(e){let{numbers:t}=a.quote_wish;return vd({id:"quote-numbers",label:"Numbers of pieces",value:t??String(a.plan?.pieces.sell??""),hint:"One, or several to compare: 12, 24, 48",complaint:ir(e,"sell"),take:n=>Or({numbers:n}),left:()=>{t!==void 0&&!t.trim()&&Or({numbers:void 0})}})}var tO=()=>le()?Om("money asking",`${Y("studio","/asking")}-name`):Om(),Mm=()=>Object.keys(g("studio","/asking")??{}).length>0,nO=[["margin","By a margin"],["markup","By a markup"],["price","A price as set"]],oO={margin:{label:"Margin, of the price",unit:"%"},markup:{label:"Markup, on the cost",unit:"%"},price:{label:"Price of a piece",unit:""}};function Fm(e,t){let{by:n,figure:o}=a.quote_wish,{label:i,unit:r}=oO[n??"price"],l=u=>r&&Oe(u)?`${u.trim()} ${r}`:u;return s`${ce("A price, for this moment",n,nO,u=>{Or({by:u,figure:""}),C(L("quote-figure"))})}
    ${n?s`<div class="row">
            ${vd({id:"quote-figure",label:i,unit:r||e,value:r?o.replace(/ %$/,""):o,complaint:ir(t,n),take:u=>Or({figure:l(u)})})}
          </div>`:d}
    <p class="hint">Your ways of selling can be kept in My studio: then each price stands here.</p>
    <button type="button" @click=${tO}>Keep my ways of selling</button>`}function iO(e,t){let n=[...new Set(e.numbers.flatMap(o=>o.unpriced))];return s`${n.length?s`<p class="alarm">
          <strong>Unpriced</strong>, and so no price to ask: ${n.join(", ")}. The cost leaves it out.
        </p>`:d}
  ${e.remarks.map(o=>s`<p class="hint">${o}</p>`)} ${Py(e,t)}
  ${rO(e,t)} ${Ay(e,t)}
  ${yd({file:a.run.file,question:Yl(),prices:e.numbers[0].prices,is_old:t})}`}function rO({numbers:e,steps:t,pack_steps:n,pack_steps_untold:o,gaps:i,currency:r},l){let u=c=>c===null?"":`, ${c} ${r} more`;return s`<div class="worth-making ${l?"old":""}">
    <h3>How many is it worth making?</h3>
    <ul class="limits">
      ${e.flatMap(({around:c})=>c.map(({text:p})=>s`<li><b>${p}</b></li>`))}
      ${i.map(({from:c,to:p,why:m})=>s`<li><b>${c===p?c:`${c} to ${p}`} cannot be made: ${m}.</b></li>`)}
    </ul>
    ${t.length?s`<details>
            <summary>Where the run begins to cost more</summary>
            <ul class="limits">
              ${t.map(c=>s`<li><b>${c.sell}: ${c.begins}${u(c.more)}</b></li>`)}
            </ul>
          </details>`:d}
    ${n.length||o.length?s`<details>
            <summary>Where another pack begins</summary>
            <p class="hint">Each material by itself, in its cheapest packs, without postage.</p>
            <ul class="limits">
              ${n.map(c=>s`<li><b>${c.sell}: ${c.shown_as}${u(c.more)} to lay out</b></li>`)}
              ${o.map(({from:c,to:p,shown_as:m,why:_})=>s`<li><b>${c===p?c:`${c} to ${p}`}: ${m}, not told: ${_}.</b></li>`)}
            </ul>
          </details>`:d}
  </div>`}function Fy({times:e}){let t=e.flatMap(({times:i,ready:r})=>r.lines.filter(({text:l})=>l).map(({text:l})=>e.length===1?l:`${Ws(i)}: ${l}`)),[{ready:n}]=e,o=[...new Set(n.notes.map(({text:i})=>i))];return!t.length&&!o.length?d:s`<div class="ready" role="group" aria-label="Pieces that are made already">
    ${t.map(i=>s`<p><b>${i}</b></p>`)} ${o.map(i=>s`<p>${i}</p>`)}
    ${n.lines.map((i,r)=>aO(i,r))}
    ${wd(e)?s`<p class="hint">${sO}</p>`:d}
  </div>`}var sO="What a piece costs and is asked for goes by all pieces made anew; to lay out is what the rest takes, and what packing all that is not delivered takes.",aO=({batches:e,made_otherwise:t},n)=>t.map(({batch:o,pieces:i,files:r})=>s`<p>
        <button type="button" @click=${()=>Ow(n,[...e.map(l=>l.batch),o])}>
          Take the ${i} of batch ${o} all the same
        </button>
        <small>Made by another ${r.join(", ")}.</small>
      </p>`);function Ly(){let{order:e}=a;if(!e)return s`<h1 tabindex="-1">Order</h1>`;let{open:t}=e,{due:n}=t.now;return s`${yn(t)} ${vn(t)}
    <h1 tabindex="-1">${String(t.now.for||"Order")}</h1>
    <p class="aside">${t.file}${n?`, due ${N(String(n))}`:d}</p>
    ${Mw()} ${mn(t.now)?fd("order"):d}
    <section class="piece quote" aria-labelledby="quote-title">
      <h2 id="quote-title">What it costs, what to ask</h2>
      ${mn(t.now)?dO():lO()}
    </section>
    ${mn(t.now)?gO():d} ${hO()} ${fO()}`}var lO=()=>s`<p class="hint" role="status">
    Once each line has its run and its pieces, it stands here what the order costs.
  </p>`;function dO(){let{quote:e,complaint:t,is_old:n}=Sw();return s`${e?s`${Ry(e)} ${Ty(e)}`:d}
    <div class="row">${uO(t)}</div>
    ${Mm()?d:Fm(e?.currency,t)} ${t?pO(t):d}
    ${e?s`${Fy(e)} ${mO(e)} ${Sy(e)} ${xy(e,n)}
          ${yd({file:me().open.file,question:Zp(me()),prices:e.times[0].prices,is_old:n})}`:t?d:s`<p class="hint" role="status">Asking what it costs ...</p>`}`}var uO=e=>vd({id:"order-times",label:"How often it is made",value:me().times,hint:"Once, if nothing is typed; several to compare: 1, 2, 4",complaint:ir(e,"times"),take:t=>v(me(),{times:t})}),cO=["times","margin","markup","price"];function pO(e){if(cO.some(n=>ir(e,n)))return d;let t=Bt("order");return s`<p class="alarm" role="status">
      ${t?s`${Jn(e.field)}${B(e)}`:e.line}
    </p>
    ${e.is_fault?s`<button type="button" @click=${ed}>Ask again</button>`:t&&$n()?s`<button type="button" @click=${()=>nt($n())}>Go to the field</button>`:d}`}function mO({times:e}){let t=[...new Set(e.flatMap(n=>n.unpriced))];return t.length?s`<p class="alarm">
    <strong>Unpriced</strong>, and so no price to ask: ${t.join(", ")}. The cost leaves it out.
  </p>`:d}function fO(){let{file:e,now:t}=me().open;if(e.includes("/"))return d;let n=t.id?String(t.id):`file:${e}`;return s`<section class="out" aria-labelledby="got-title">
    <h2 id="got-title">What it got</h2>
    <div class="choice">
      <button type="button" @click=${()=>Be(`order ${n}`,e)}>Its batches and their lots</button>
    </div>
  </section>`}function hO(){let{file:e,now:t}=me().open,n=Ti(t);if(!n.length)return d;let{made:o,is_old:i}=Aw();return ay({order:e,words:n,planned:l=>o&&(o.together.find(u=>u.word===l)?.batches??[]).flatMap(({numbers:u,lines:c})=>u.map(p=>({number:p,lines:c.map(({run:m,pieces:_})=>`${z(_,"piece")} of ${m}`)}))),is_old:i})}function gO(){let{file:e,now:t}=me().open,n={plan:{file:e,order:t},paper:a.printing.paper};return s`<section class="out" aria-labelledby="sheets-title">
    <h2 id="sheets-title">The sheets for the bench</h2>
    ${dd()}
    <div class="choice">
      ${Rn({words:"Bench sheets",kind:"sheet",file:`${Sn(e)} sheets`,of:n},"strong")}
    </div>
    <p role="status">${Tn()}</p>
  </section>`}var _O=(e,t)=>(e.due??"~").localeCompare(t.due??"~")||(t.changed??"").localeCompare(e.changed??"");function By(){let e=[...a.files?.orders??[]].sort(_O),t=a.new_order.trim(),n=()=>{pe(async()=>{await n$(t),f({new_order:""})})};return s`${Wt("Orders")}
    <section aria-labelledby="orders-title">
      <h2 id="orders-title">Your orders</h2>
      ${e.length?on(e,$O):s`<p class="aside">
              None yet. An order names runs of yours and how many pieces of each somebody wants.
            </p>`}
      <h2>A new order</h2>
      <div class="row">
        <div class="field">
          <label for="new-order">For</label>
          <input
            id="new-order"
            .value=${P(a.new_order)}
            @input=${o=>f({new_order:o.target.value})}
            autocomplete="off"
            spellcheck="false"
          />
        </div>
        <button type="button" ?disabled=${!t} @click=${n}>Begin the order</button>
      </div>
      ${t?"":s`<p class="hint">Say first who it is for: a customer, a market.</p>`}
    </section>
    ${It("order")}`}function $O(e){let{pieces:t,due:n,changed:o}=e,i=[t===void 0?"":z(t,"piece"),n?`due ${N(n)}`:"",o?`changed ${N(o)}`:""].filter(Boolean);return kn({kind:jo,one:e,facts:i,open:()=>Gt(e.file)})}function Wy(){if(a.view==="order"&&a.order)return Cy(a.order.open);let e=uo();if(e)return Cy(e);let t=bO();if(t)return t;let{run:n}=a,o=a.formula_of==="apart"||!(G(n)||n.theirs||n.failed);return a.view==="formula"&&o?wO():n.theirs?Cm(n):n.failed?xd(`Not saved: ${n.failed}`):G(n)?Bm:kd(n.shipped?Lm:`Saved in ${n.file}`)}function Cy(e){return e.theirs?Cm(e):e.failed?xd(`Not saved: ${e.failed}`):G(e)?Bm:kd(e.shipped?Lm:`Saved in ${e.file}`)}var Lm="Built-in: your first change is saved as a copy.",Bm={words:"Saving ...",is_kept:!1},kd=e=>({words:e,is_kept:!0}),xd=e=>({words:e,is_kept:!1,is_failed:!0}),Cm=e=>xd(Ko(e)?`Not saved: ${e.file} was deleted outside this page. Save it again, or leave it deleted.`:`Not saved: ${e.file} was changed outside this page. Choose which version to keep.`);function bO(){let e=a.formulas.apart?"apart":"run",t=Bn(e);if(t)return Cm(t);if((e==="apart"?[a.formulas.apart]:[a.formulas.pour,a.formulas.pipe]).some(o=>o&&G(o)))return a.complaint?.file===""?xd(`Not saved: ${a.complaint.problem}`):Bm}function wO(){let e=a.formulas[a.formula_of];return kd(e?e.shipped?Lm:`Saved in ${e.file}`:"")}function Rd(){let{view:e,mould:t,order:n,past:o,future:i}=a;if(e==="shelf"||e==="trail")return{};if(e==="moulds"&&t)return Td(t,Z_,X_);let r=ct(e)?uo():void 0;return r?Td({past:Iy(r,o),future:Iy(r,i)},Er,Uu):ct(e)?{undo:jr()&&op,redo:Yu()&&X$}:e==="order"&&n?Td(n,o$,i$):Td({past:o,future:i},Er,Uu)}function Iy(e,t){let n=t.at(-1),o=n&&[n.own_fats,n.own_tips].find(i=>i?.file===e);return o&&o.now!==e.now?t:[]}var Td=({past:e,future:t},n,o)=>({undo:e.length?n:void 0,redo:t.length?o:void 0});var Ey={runs:"Runs",orders:"Orders",formulas:"Formulas",moulds:"Moulds",fats:"Fats",tips:"Tips",shelf:"Shelf"},yO={weigh:["Weigh","M4 20h16M6 20l2-9h8l2 9M12 11V7M7 7h10M10 16h4"],record:["Record","M6 5h12v15H6zM9.5 3.5h5v3h-5zM9 11h6M9 15h4"],"set-up":["Set up","M4 7h9m4 0h3M4 17h3m4 0h9M15 4.5v5M9 14.5v5"],watch:["Cautions","M12 4l9 16H3zM12 10v5M12 17v1"],money:["Piece","M4 8h16v10H4zM4 8l3-3h10l3 3M9 13h6"],days:["Days","M5 6h14v14H5zM5 10.5h14M9 3.5v5M15 3.5v5"],mould:["Mould","M5 6h3l1 12h6l1-12h3M9.5 12h5"],print:["Print","M7 9V4h10v5M5 9h14v8h-3M8 17H5V9M8 14h8v6H8z"]},vO="M9 6l-5 5 5 5M4 11h9a6 6 0 0 1 6 6v2",kO="M15 6l5 5-5 5M20 11h-9a6 6 0 0 0-6 6v2",Wm=e=>s`<svg class="sign" viewBox="0 0 24 24" aria-hidden="true">${R`<path d=${e} />`}</svg>`;function Hy(){let e=a.view==="reading";return s`<header class="rail">
    <div class="rail-top">
      <p class="mark" aria-hidden="true">▽ Brimwright</p>
      ${e?d:s`<nav class="rail-lists" aria-label="Lists">
                ${Qf.map(t=>qy(t,Ey[t],s`${Ey[t]}`))}
              </nav>
              ${TO()}`}
    </div>
    ${e?d:RO()}
  </header>`}var xO={metric:s`g<span class="wide">, mm</span>`,both:s`both`,us:s`oz<span class="wide">, in</span>`},Sd=["metric","both","us"],Ny={metric:"g",both:"both",us:"oz"},jy=e=>()=>{f({units:e}),localStorage.setItem("units",e)};function TO(){let e=Sd[(Sd.indexOf(a.units)+1)%Sd.length];return s`<div class="tools units" role="group" aria-label="Units">
      ${Sd.map(t=>s`<button type="button" aria-pressed=${a.units===t?"true":"false"} @click=${jy(t)}>
            ${xO[t]}
          </button>`)}
    </div>
    <button type="button" class="next-units" @click=${jy(e)}>
      <span aria-hidden="true">⇄ </span><span class="unseen">Units: </span>${Ny[a.units]}<span
        class="unseen"
        >. Change to ${Ny[e]}</span
      >
    </button>`}function RO(){let{undo:e,redo:t}=Rd();return s`<div class="bar">
    ${a.run.file?SO():d}
    <div class="tools steps" role="group" aria-label="Steps">
      <button type="button" ?disabled=${!e} @click=${e}>${Wm(vO)}<span>Undo</span></button>
      <button type="button" ?disabled=${!t} @click=${t}>${Wm(kO)}<span>Redo</span></button>
    </div>
    ${a.run.file||a.view==="order"?MO():d}
  </div>`}function SO(){return s`<nav aria-label="Views of this run">
    <p class="rail-name">${String(a.run.now.name??a.run.file)}</p>
    <div class="rail-views">${Gf.map(AO)}</div>
  </nav>`}function AO(e){let[t,n]=yO[e],o=DO(e);return qy(e,o?`${t}, ${o.words}`:t,s`${Wm(n)}<span>${t}</span>${o?s`<small class=${o.is_danger?"danger":""}
            ><span aria-hidden="true">${o.sign}</span> ${o.words}</small
          >`:d}`)}function DO(e){if(e==="watch"&&l$())return{sign:"\u26A0",words:"Danger",is_danger:!0};if(e==="record"&&PO())return{sign:"\u2717",words:"refused"};if(e==="set-up"&&OO())return{sign:"\u25CB",words:"missing"}}var PO=()=>a.record.run===a.run.file&&a.record.batches.some(({begun:e})=>Ua(e.id)>0),OO=()=>a.complaint!==void 0&&!a.complaint.is_fault;function qy(e,t,n){let o=a.view===e||a.view==="order"&&e==="orders"||a.view==="trail"&&e==="shelf"||a.view==="learned"&&e==="record";return s`<button
    type="button"
    aria-label=${t}
    aria-current=${o?"page":d}
    @click=${()=>{Xe(e)}}
  >
    ${n}
  </button>`}function MO(){let{words:e,is_kept:t,is_failed:n}=Wy();return s`<p class="saving ${n?"failed":t?"kept":""}" role="status">${e}</p>`}var Uy=()=>s`<section class="card" aria-label="What it is for">
      <div class="row">
        ${h({label:"Due",at:"/due",date:!0,optional:!0,short:!0,hint:"The day it is handed over. Left blank, it is begun today."})}
        ${h({label:"Pieces to sell",at:"/sell",count:!0,short:!0})}
        ${h({label:"For",at:"/for",optional:!0,hint:"Whom or what, such as the spring fair."})}
      </div>
    </section>
    ${fd("run")}`;var Im=e=>Pn("GET",`/api/learned?run=${encodeURIComponent(e)}`),zy=e=>Tt("/api/learned/take",e);var FO=1e3,Jy=()=>[a.run.file,a.plan,a.record.version],LO=(e,t)=>e!==void 0&&e.every((n,o)=>n===t[o]),rr=e=>f({learned:{...a.learned,...e}});function Vy(){mo();let{learned:e}=a,t=a.record.run===a.run.file&&a.record.version!==void 0&&!a.is_old,n=LO(e.of,Jy());return t&&!n&&!Em&&BO(),{...e.run===a.run.file?e:{},is_old:!t||!n}}var Ad=()=>rr({of:void 0}),Em=!1;async function BO(){Em=!0;try{await CO()}finally{Em=!1,f({})}}async function CO(){let e=Jy(),t=a.run.file;try{let n=await Im(t);t===a.run.file&&rr({of:e,run:t,kept:n,failed:void 0})}catch(n){if(!(n instanceof w))throw n;if(t!==a.run.file)return;rr({of:e,run:t,failed:B(n.complaint)}),n.may_pass&&window.setTimeout(Ad,FO)}}var WO=()=>G(a.run)||[...fn()].some(G);async function IO(e,t){if(!WO())return[e,t];await rt(),await ht();let n=await Im(a.run.file);return[n.learned?.figures.find(({name:o})=>o===e.name)??e,n]}var Qy=e=>Yy(e,"take"),Gy=e=>Yy(e,"undo");async function Yy(e,t){let{kept:n,doing:o}=a.learned;if(o!==void 0||!n||!e.in_file)return;rr({doing:e.name,said:void 0});let i=a.run.file;try{let[r,l]=await IO(e,n),{file:u}=e.in_file,c=await zy({run:i,file:u,version:l.versions[u]??"",[t]:r.name});EO(c),Ky(e,`${u} was changed.`)}catch(r){if(!(r instanceof w))throw r;Ky(e,`Nothing was written: ${B(r.complaint)}.`,!0),Ad()}finally{rr({doing:void 0})}}function Ky({name:e},t,n=!1){rr({said:{name:e,words:t,is_refused:n}}),D(t)}function EO(e){for(let t of[a.run,...fn()])t.file===e.file&&Xh(t,e);se(),Za()}function pi(e,t){let{units:n}=a;return e==="mm"?`${t>0?"+":""}${x($e(n,t))}`:e==="ml"?x(ke(n,t)):e==="g"?x(H(n,t)):e==="g/ml"?`${Ve(t,3)} g/ml`:e==="%"?`${S(t,1)} %`:e==="min"?t<5?`${Ve(t*60,0)} s`:`${Ve(t,0)} min`:S(t,3)}var Dd=e=>e===1?"1 batch":`${e} batches`,Zy=e=>e.charAt(0).toUpperCase()+e.slice(1),Xy=({figures:e,batches:t})=>e.length?`From ${Dd(t)} recorded beside this run. Only a batch's own notes tell a figure.`:`${Dd(t)} recorded beside this run: a figure is shown once three of them tell it.`;function ev(e,t){let n=`learned-${e.name.replaceAll(/\W/g,"-")}`,{unit:o,value:i,low:r,high:l,values:u}=e;return s`<article class="learned-figure" data-name=${e.name} aria-labelledby=${n}>
    <h3 id=${n}>${Zy(e.words)}</h3>
    <div class="learned-told">
      <p class="learned-value"><b>${pi(o,i)}</b></p>
      <p>
        between <span class="low">${pi(o,r)}</span> and <span class="high">${pi(o,l)}</span>, from
        <span class="count">${Dd(u.length)}</span>
      </p>
      <p>
        ${e.used_now===null?NO(e):s`The plan uses <b class="used">${pi(o,e.used_now)}</b>.`}
      </p>
    </div>
    ${jO(e)} ${HO(e)} ${UO(e)} ${zO(e,n,t)} ${JO(e)}
    ${VO(e)}
  </article>`}var NO=({unit:e})=>e==="min"?"The studio says nothing of it yet.":"The plan uses none.";function jO({values:e,low:t,high:n,value:o,used_now:i}){let r=[...e.map(m=>m.value),t,n,...i===null?[]:[i]],[l,u]=[Math.min(...r),Math.max(...r)],c=u-l||1,p=m=>6+288*(m-l)/c;return s`<svg class="learned-strip" viewBox="0 0 300 30" aria-hidden="true">
    ${R`<rect class="range" x=${p(t)} y="6" width=${Math.max(1,p(n)-p(t))} height="18" />
      <path class="told" d="M${p(o)} 3v24" />
      ${i===null?d:R`<path class="used" d="M${p(i)} 1v28" />`}
      ${e.map(m=>R`<circle cx=${p(m.value)} cy="15" r="3" />`)}`}
  </svg>`}function HO({standing:e,in_file:t}){return t?.is_taken?d:e==="stands nowhere"||!t?s`<p class="aside">For you to know: no file has a place for it.</p>`:e==="too few"?s`<p class="aside">Too few batches yet to tell it from chance: it can be taken from six on.</p>`:e==="as planned"?s`<p class="aside">What the plan uses lies between these: no reason to change it.</p>`:t.refused?s`<p class="minded">
        <strong>Cannot be taken:</strong> it ${t.refused.problem}. ${Zy(t.refused.remedy)}.
      </p>`:d}var qO=({of:e,unit:t,now:n,then:o})=>s`<li>
    ${e}: ${pi(t,n)} <span aria-hidden="true">→</span><span class="unseen">becomes</span>
    <b>${pi(t,o)}</b>
  </li>`;function UO({with_it:e,no_plan_with_it:t,in_file:n}){return n?.is_taken?d:t!==void 0?s`<p class="minded"><strong>With it there would be no plan:</strong> ${t}.</p>`:e.length?s`<p>With it:</p>
        <ul class="learned-effects">
          ${e.map(qO)}
        </ul>`:d}function zO(e,t,n){let{in_file:o,standing:i}=e;if(!o)return d;let{file:r,says:l,would_say:u,is_taken:c,taken:p,refused:m}=o,_=!c&&!m&&i==="suggested",b=n||a.learned.doing!==void 0;return s`${p?KO(p,o):d}
    ${_?s`<p class="in-file">
            In ${r}: ${l??"nothing yet"} <span aria-hidden="true">→</span><span class="unseen">becomes</span>
            <b>${u}</b>
          </p>`:d}
    <div class="row">
      ${_?s`<button
              type="button"
              class="strong"
              ?disabled=${b}
              aria-describedby=${t}
              @click=${()=>{Qy(e)}}
            >
              Take it
            </button>`:d}
      ${p?s`<button
              type="button"
              ?disabled=${b}
              aria-describedby=${t}
              @click=${()=>{Gy(e)}}
            >
              Take back
            </button>`:d}
    </div>`}var KO=({on:e,batches:t,before:n,steps:o},{file:i,says:r})=>s`<p class="taken">
    <strong><span aria-hidden="true">✓</span> Taken</strong> on ${N(e)} from ${Dd(t)}: <b>${r}</b> in
    ${i}, and the plan uses it. Before: ${n??"nothing"}${o>1?", which was taken as well":""}.
  </p>`;function JO({name:e}){let{said:t}=a.learned;return t?.name!==e?d:s`<p class=${t.is_refused?"complaint":"hint"} role="status">${t.words}</p>`}var VO=({values:e,unit:t,name:n})=>s`<details>
    <summary>Batch by batch</summary>
    <ul class="learned-batches" data-of=${n}>
      ${e.map(o=>s`<li>${o.batch}, ${N(o.date)}: <b>${pi(t,o.value)}</b></li>`)}
    </ul>
  </details>`;var QO=({years:e})=>e.map(String).reverse();function tv(e){let t=a.run.file,n=Sn(t),o=i=>({kind:"picture",learned:{file:t,...i}});return s`<section class="out" aria-labelledby="learned-pictures">
    <h3 id="learned-pictures">Plan against actual, in one picture</h3>
    <div class="choice">
      ${Fe("This run",ld(o({})))}
      ${Fe("This run, SVG",Ue(`${n} plan against actual.svg`,o({})))}
      ${QO(e).map(i=>s`${Fe(`The year ${i}`,ld(o({year:i})))}
          ${Fe(`The year ${i}, SVG`,Ue(`${n} ${i}.svg`,o({year:i})))}`)}
    </div>
    <p role="status">${Tn()}</p>
  </section>`}function nv(){let{kept:e,failed:t,is_old:n}=Vy();return s`<section class="learned" aria-labelledby="run-title">
    <h1 id="run-title" tabindex="-1">${a.plan?.run??String(a.run.now.name??"")}</h1>
    <p><button type="button" @click=${()=>{Xe("record")}}>Back to the record</button></p>
    <h2>What your batches say</h2>
    ${t===void 0?d:s`${GO(t)}`}
    ${e?YO(e.learned,n):t===void 0?s`<p class="hint" role="status">Reading ...</p>`:d}
  </section>`}var GO=e=>s`<p class="alarm" role="status"><strong>What they say could not be read:</strong> ${e}.</p>
    <button type="button" @click=${Ad}>Ask again</button>`;function YO(e,t){return e?.batches?s`<div class=${t?"old":""}>
    <p class="hint">${Xy(e)}</p>
    ${e.figures.map(n=>ev(n,t))} ${ZO(e.figures)} ${XO(e)}
    ${eM(e)} ${tM(e)} ${tv(e)}
  </div>`:s`<p>No batch is recorded yet. A figure is shown once three batches tell it.</p>`}function ZO(e){let t=e.some(({level_percent:o})=>o!==null),n=e.some(({level_percent:o})=>o===null);return e.length?s`<p class="aside">
    Each dot is a batch. The shaded part is the range, the line in it what they say together, the dashed line what the
    plan uses.
    ${t?"From six batches on, a range holds the true figure 19 times of 20, unless notes are wrong in the same way each time. ":d}
    ${n?"Below six, it is from the least to the greatest.":d}
  </p>`:d}var XO=({left_out:e})=>e?s`<p class="aside">
        ${e===1?"1 batch was":`${e} batches were`} of another formula, mould or topping under the same
        name, and ${e===1?"is":"are"} not counted where that matters.
      </p>`:d,eM=e=>e.untold.length?s`<h3>What the notes cannot tell</h3>
        <ul class="limits">
          ${e.untold.map(({text:t})=>s`<li>${t}</li>`)}
        </ul>`:d,tM=e=>e.contradictions.length?s`<h3>Notes that contradict each other</h3>
        <ul class="limits">
          ${e.contradictions.map(({text:t})=>s`<li>${t}</li>`)}
        </ul>`:d;function iv(e){if(!z$(e))return d;let{whole:t}=e,{batches:n}=t.pieces,o=Ye(t)?`${z(n,"batch","batches")} together`:"all whippings together";return s`<section class="needs" aria-labelledby="needs-title">
    <h2 id="needs-title" tabindex="-1">To have ready for the whole run <small>${o}</small></h2>
    <p class="aside">To buy and to set out by, not to weigh by: each batch is weighed by itself.</p>
    <div class="jugs">
      ${ov(e,"pour","The base, whole run")}
      ${t.pipe?ov(e,"pipe","The topping, whole run"):d} ${nM(e)}
    </div>
  </section>`}function ov(e,t,n){let{whole:o}=e,i=t==="pour"?o.pour:o.pipe,r=[...ub(i),...xl(i)];return s`<div class="jug">
    <h3>${n} <small>${i.formula}</small></h3>
    ${r.map(({one:l,i:u})=>Pd(`${t}.ingredients.${u}.g`,l.name,si(a.units,l)))}
    ${Pd(`${t}.make_g`,t==="pour"?"Base in all":"Topping in all",H(a.units,i.make_g))}
  </div>`}var Pd=(e,t,n)=>I({key:`needs.${e}`,label:t,shown:n,of:e});function nM(e){let{whole:t}=e,n=(t.pour.layers??[]).flatMap((r,l)=>r.colours.map((u,c)=>({layer:r,one:u,i:l,j:c}))),o=t.dust??[];if(!n.length&&!o.length)return d;let i=r=>X(a.units,ae(r,""));return s`<div class="jug">
    <h3>Colours and dust, whole run</h3>
    ${n.map(({layer:r,one:l,i:u,j:c})=>Pd(`pour.layers.${u}.colours.${c}.g`,`${l.name}, for ${r.name}`,si(a.units,l)))}
    ${o.map((r,l)=>Pd(`dust.${l}.g`,r.name,i(r)))}
  </div>`}function rv(e){let{cost:t,fresh_g:n,cured_g:o,label_g:i,lightest:r,size:l}=e.piece,u=r?"A bar on average, ":"",c=p=>u?u+p.toLowerCase():p;return s`<section class="piece" aria-labelledby="piece-title">
      <h2 id="piece-title">The piece</h2>
      ${I({key:"piece.fresh",label:c("Fresh"),shown:H(a.units,n),of:"piece.fresh_g"})}
      ${o===null?d:I({key:"piece.cured",label:c("Cured"),shown:H(a.units,o),of:"piece.cured_g"})}
      ${r?I({key:"piece.lightest",label:"The lightest bar",note:r.cured_g===null?"fresh":"cured",shown:H(a.units,r.cured_g??r.fresh_g),of:r.cured_g===null?"piece.fresh_g":"piece.cured_g"}):d}
      ${i===null?d:I({key:"piece.label",label:"Net weight for the label",shown:H(a.units,i,0),of:"piece.label_g"})}
      ${l?I({key:"piece.size",label:"Size for its box, w \xD7 d \xD7 h",shown:[`${[l.width_mm,l.depth_mm,l.height_mm].map(p=>S(p,0)).join(" \xD7 ")} mm`,""],of:"piece.size"}):d}
      ${t&&t.amount!==null?s`${I({key:"piece.cost",label:"Material cost of one piece",shown:[`${t.amount} ${t.currency}`,""],size:"weigh",note:`${t.total} ${t.currency} for the run`,of:"piece.cost.amount"})}
            ${t.unpriced.length?s`<p class="alarm">Unpriced, and not in this figure: ${t.unpriced.join(", ")}.</p>`:d}`:s`<p class="aside">No price of anything in it is given, so there is no cost.</p>`}
      ${Nm(e)}
    </section>
    ${My()} ${iv(Vi(e))}`}function Nm(e){let t=e.label;if(!t)return d;let n=(t.allergens??[]).filter(i=>i.named).map(i=>i.name),o=(i,r)=>r?s`<h3>${i}</h3>
          <p>${r}</p>`:d;return s`<details>
    <summary>Label draft, ${t.market}</summary>
    ${o("Net quantity",t.net_quantity?`${t.net_quantity.statement}: ${t.net_quantity.because}.`:"")}
    ${o("Ingredients, as saponified",t.as_saponified?.text)}
    ${o("Ingredients, as charged",t.as_charged?.text)} ${o("Allergens to name",n.join(", "))}
    <ul class="limits">
      ${(t.remarks??[]).map(i=>s`<li>${i.text}</li>`)}
    </ul>
  </details>`}var[av,Hm]=[440,270],[Is,jm,Od,sr]=[64,av-10,10,Hm-52],oM=6,iM=8;function sv(e){let t=e/oM,n=10**Math.floor(Math.log10(t)),o=[1,2,5,10].map(i=>i*n).find(i=>i>=t);return Array.from({length:Math.floor(e/o+1e-9)+1},(i,r)=>r*o)}var ar=e=>S(e,1);function lv(e,t){let n=e.at(-1)?.depth_mm??1,o=e.at(-1)?.volume_ml??1,i=u=>ar(Is+(jm-Is)*u/n),r=u=>ar(sr-(sr-Od)*u/o),l=e.map(({depth_mm:u,volume_ml:c})=>`L${i(u)} ${r(c)}`).join("");return s`<svg
      class="level-curve"
      viewBox="0 0 ${av} ${Hm}"
      role="img"
      aria-label="Level curve: volume by depth, with the pour line at ${t} millimetres"
    >
      ${sv(n).map(u=>R`<path class="grid" d="M${i(u)} ${Od}V${sr}" />
            <text x=${i(u)} y=${sr+20} text-anchor="middle">${ar(u)}</text>`)}
      ${sv(o).map(u=>R`<path class="grid" d="M${Is} ${r(u)}H${jm}" />
            <text x=${Is-8} y=${r(u)} text-anchor="end" dominant-baseline="middle">${ar(u)}</text>`)}
      ${R`<text x=${(Is+jm)/2} y=${Hm-6} text-anchor="middle">depth, mm</text>
        <text transform="translate(16 ${(Od+sr)/2}) rotate(-90)" text-anchor="middle">volume, ml</text>
        <path class="curve" d="M${i(0)} ${r(0)}${l}" />
        <path class="pour-line" d="M${i(t)} ${Od}V${sr}" />`}
    </svg>
    ${rM(e)}`}function rM(e){let t=Math.max(1,Math.round(e.length/iM)),n=e.filter((o,i)=>(i+1)%t===0);return s`<details>
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
              <th scope="row">${ar(o)}</th>
              <td>${ar(i)}</td>
              <td>${S(r,2)}</td>
            </tr>`)}
      </tbody>
    </table>
  </details>`}var Md=Math.PI/8,sM=500,qm=class extends HTMLElement{#n=[];#e=0;#t;#i=!1;#o=!1;#r="";#s=!1;#l="";#a="Drawing ...";#u=0;#m=!1;#f=new ResizeObserver(()=>this.#t?.fit());#h=new IntersectionObserver(([t])=>this.#$(t.isIntersecting),{rootMargin:"400px"});set views(t){this.#n=t,this.#g()}connectedCallback(){this.#d(),this.#h.observe(this)}disconnectedCallback(){window.clearTimeout(this.#u),this.#h.disconnect(),this.#f.disconnect(),this.#t?.end(),this.#t=void 0,this.#l="",URL.revokeObjectURL(this.#r)}#$(t){this.#m=t,t&&requestIdleCallback(()=>{this.#b()},{timeout:1500})}async#b(){if(this.#t||this.#o)return this.#g();let t=this.querySelector("canvas");if(!(!this.isConnected||!t||this.#i)){this.#i=!0;try{let{Turntable:n}=await import("./solid_view-3BHCV7RK.js");this.#t=new n(t),this.#f.observe(t)}catch{this.#o=!0}this.#i=!1,this.#d(),await this.#p()}}#g(){let t=this.#t||this.#o;!this.#m||!t||this.#c()===this.#l||(window.clearTimeout(this.#u),this.#u=window.setTimeout(()=>{this.#p()},sM))}#c(){let{of:t}=this.#n[this.#e],n=this.#o?"plan"in t?"piece":"picture":"glb",[o,i]=Object.entries(t)[0];return JSON.stringify({kind:n,[o]:this.#s&&!this.#o?{...i,"cut-open":!0}:i})}async#p(){let t=this.#c();if(t!==this.#l){try{let n=await dn(JSON.parse(t));if(t!==this.#c()||!this.isConnected)return;this.#o?(URL.revokeObjectURL(this.#r),this.#r=URL.createObjectURL(n)):this.#t?.show(Mi(await n.arrayBuffer())),this.#l=t,this.#a=""}catch(n){if(!(n instanceof w))throw n;this.#a=n.message}this.#d()}}#_(t){t(),this.#a="Drawing ...",this.#d(),this.#p()}#d(){let t=s`<div class="choice" role="group" aria-label="What to look at">
      ${this.#n.map((o,i)=>s`<button
            type="button"
            aria-pressed=${i===this.#e?"true":"false"}
            @click=${()=>this.#_(()=>this.#e=i)}
          >
            ${o.words}
          </button>`)}
    </div>`,n=s`<p class="aside" role="status">${this.#a}</p>`;St(s`${t} ${this.#o?this.#y():this.#w()} ${n}`,this)}#w(){let t=i=>()=>this.#t?.turn(i),n=i=>()=>this.#t?.tip(i),o=()=>this.#_(()=>this.#s=!this.#s);return s`<canvas
        role="img"
        aria-label="${this.#n[this.#e]?.words??""} as a solid; turn it with the buttons below."
      ></canvas>
      <div class="choice">
        <button type="button" @click=${t(-Md)}>Turn left</button>
        <button type="button" @click=${t(Md)}>Turn right</button>
        <button type="button" @click=${n(Md)}>From above</button>
        <button type="button" @click=${n(-Md)}>From below</button>
        <button type="button" aria-pressed=${this.#s?"true":"false"} @click=${o}>Cut open</button>
      </div>`}#y(){return s`<p class="aside">This browser shows no solids; here is the drawing.</p>
      ${this.#r?s`<img
              src=${this.#r}
              alt="${this.#n[this.#e].words}, drawn to scale with its measures"
            />`:d}`}};customElements.define("solid-panel",qm);function dv(e){let{measured:t}=a;if(!t)return s`<p role="status">${a.measuring_failed??"Measuring the mould ..."}</p>`;let n=t.gauge.pockets[0],o=t.gauge.notes;return s`<section class="mould" aria-labelledby="mould-title">
    <h2 id="mould-title">The mould <small>${e.pour.mould}</small></h2>
    ${I({key:"mould.brimful",label:"To the brim",note:`${x($e(a.units,n.brim_mm-n.floor_mm))} deep, ${t.gauge.pockets.length} ${t.gauge.pockets.length===1?"cavity":"cavities"}`,shown:ke(a.units,n.brimful_ml),of:"pockets.0.brimful_ml",working:t.gauge.how.find(i=>i.of==="pockets.0.brimful_ml")})}
    ${Cl(Lb(t.mould))}
    <div class="beside">
      <figure>
        <figcaption>Volume by depth; the dashed line is the pour line</figcaption>
        ${lv(n.levels,e.pour.depth_mm)}
      </figure>
      <figure>
        <figcaption>3D view</figcaption>
        <solid-panel .views=${aM(e,t.mould)}></solid-panel>
      </figure>
    </div>
    ${o.length?s`<ul class="limits">
            ${o.map(i=>s`<li>${i.text}</li>`)}
          </ul>`:d}
  </section>`}function aM(e,t){let n={words:"The mould, filled",of:{gauge:{file:t,"below-brim":`${e.pour.below_brim_mm} mm`}}},o={words:"The whole piece",of:{plan:{file:a.run.file,run:a.run.now}}};return e.pipe||e.decorations?.length||e.pour.layers?.length?[o,n]:[n,o]}var lM=e=>e.batches.flatMap(t=>t.numbers.map(n=>({number:n,one:t}))).sort((t,n)=>t.number-n.number);function uv(e){let{batch:t}=a.printing;return Ye(e)&&t<=e.pieces.batches?t:0}function dM(e){if(!Ye(e))return d;let t=uv(e),n=i=>ci({batch:Number(i.target.value)}),o=(i,r)=>s`<option value=${i} .selected=${P(i===t)}>${r}</option>`;return s`<div class="row">
    <div class="field choose">
      <label for="sheet-batch">The sheet is for</label>
      <select id="sheet-batch" @change=${n}>
        ${o(0,"the whole run")}
        ${lM(e).map(({number:i,one:r})=>o(i,`batch ${i} of ${e.pieces.batches}: ${nn(e,r)}`))}
      </select>
    </div>
  </div>`}function cv(e){let{paper:t}=a.printing,n=Sn(a.run.file),o={file:a.run.file,run:a.run.now},i=a.measured?.mould,r={file:i,"below-brim":`${e.pour.below_brim_mm} mm`},l=uv(e),u={plan:o,paper:t,...l?{batch:String(l)}:{}};return s`<section class="out" aria-labelledby="out-title">
    <h2 id="out-title">Print and download</h2>
    <h3>The sheet for the bench</h3>
    ${dd()} ${dM(e)}
    <div class="choice">
      ${Rn({words:"Bench sheet",kind:"sheet",file:`${n}${l?` batch ${l}`:""}`,of:u},"strong")}
    </div>
    <h3>For the label, the wall and the printer</h3>
    <div class="choice">
      ${e.label?Fe("Label draft",Ue(`${n} label.txt`,{kind:"label",plan:o})):""}
      ${Fe("Drawing of the pour, true size",Ue(`${n} pour.svg`,{kind:"picture",plan:o}))}
      ${Fe("Drawing of the piece",Ue(`${n}.svg`,{kind:"piece",plan:o}))}
      ${Fe("Whole piece, GLB (3D viewer)",Ue(`${n}.glb`,{kind:"glb",plan:o}))}
      ${Fe("Whole piece, STL (3D printing)",Ue(`${n}.stl`,{kind:"stl",plan:o}))}
      ${i?s`${Fe("Filled cavity, GLB (3D viewer)",Ue(`${n} cavity.glb`,{kind:"glb",gauge:r}))}
            ${Fe("Cavity, STL (3D printing)",Ue(`${n} cavity.stl`,{kind:"stl",gauge:{file:i}}))}`:""}
    </div>
    <p role="status">
      ${Tn()||`The drawing has the pour line ${x($e(a.units,e.pour.below_brim_mm))} below the brim.`}
    </p>
  </section>`}var pv=e=>cv(e);var je={at:"/decorations"},lr=e=>`${je.at}/${e}`,So=e=>O("run",`${lr(e)}/name`).trim()||`Decoration ${e+1}`,dt=()=>$(a.run.now,"/cut")!==void 0,mi=e=>["mould","rod","drizzle","bought"].find(t=>g("run",`${e}/${t}`)!==void 0),Es=e=>["per_piece","per_cast"].find(t=>g("run",`${e}/${t}`)!==void 0);var xt="/batch",mv=e=>`${e}/moulds_owned`;function Um(){return M({name:"batches",pointers:[xt],summary:`Batches${uM()}`,body:()=>s` <p class="hint">What you leave blank sets no limit. Pots, bowl and moulds owned stand in your studio.</p>
        ${W("run",xt)}
        <div class="row">${cM()} ${mM()}</div>
        ${A({question:"Cavities at each filling",at:xt,asked_at:`${xt}/fill`,chosen:g("run",`${xt}/fill`)==="full"?"full":"needed",answers:[["needed","As many as are needed"],["full","All of them, the rest to stock"]],puts:e=>fv("fill",e==="full"?e:void 0)})}`})}function uM(){let[e,t]=[`${xt}/pieces`,`${xt}/casts`].map(o=>O("run",o)),n=[e&&`at most ${e} in a batch`,t&&`at most ${t} casts in a batch`].filter(Boolean);return n.length?`: ${n.join(", ")}`:""}function fv(e,t){let n=_e("run",xt,[e]),o=t===void 0?n:{...n,[e]:t};return Object.keys(o).length?o:void 0}function cM(){let e=g("run",`${xt}/casts`)!==void 0,t=(n,o)=>h({label:o,at:`${xt}/${n}`,count:!0,optional:!0,takes_part:!0,short:!0,term:"batch"});return dt()?g("run",`${xt}/pieces`)!==void 0?s`${t("pieces","Most bars in a batch")}
        <button type="button" @click=${pM}>Count loaves instead</button>`:t("casts","Most loaves in a batch"):e?t("casts","Most casts in a batch"):t("pieces","Most pieces in a batch")}function pM(){q("run","Counted in loaves",xt,fv("pieces",void 0))}function mM(){let e=`${xt}/whippings`;return!yt()&&g("run",e)===void 0?d:h({label:"Whippings a batch",at:e,count:!0,optional:!0,takes_part:!0,short:!0,hint:"Each weighed out by itself; else one."})}var fM={piece:{per_piece:""},surface:{on_covered_surface:"",coverage:"",share_that_sticks:""}},Et={at:"/dust"},Fd=e=>O("run",`/dust/${e}/name`).trim()||`Dust ${e+1}`;function hv(){ue("set-up dust"),U(Et,{name:""},"Dust")}function hM(e){return g("run",`${e}/per_piece`)!==void 0?"piece":g("run",`${e}/on_covered_surface`)===void 0?void 0:"surface"}function gv(e){let t=`/dust/${e}`,n=hM(t),o=Fd(e),i=r=>({..._e("run",t,["per_piece","on_covered_surface","coverage","share_that_sticks"]),...fM[r]});return s` ${h({label:"Which powder",at:`${t}/name`})}
  ${A({question:"How much of it?",at:t,chosen:n,answers:[["piece","Weighed for one piece"],["surface","By the surface it covers"]],puts:i})}
  ${n==="piece"?h({label:`${o}, for one piece`,at:`${t}/per_piece`,unit:"g",hint:"What misses it included."}):d}
  ${n==="surface"?s`<div class="row">
            ${h({label:"Powder on the covered surface",at:`${t}/on_covered_surface`,unit:"mg/cm2",short:!0})}
            ${h({label:"Share of the surface covered",at:`${t}/coverage`,unit:"%",short:!0})}
            ${h({label:"Share of the powder that sticks",at:`${t}/share_that_sticks`,unit:"%",short:!0})}
          </div>
          <p class="hint">
            The surface is all exposed surface of the piece in its mould: topping, decoration, level batter.
          </p>`:d}
  ${vo("run",t,o)}`}var gM={"by number":{},on_top:{on_top:{pressed_in:""}},buried:{buried:{cover:""}}};function _M(e){return["on_top","buried"].find(t=>g("run",`${e}/${t}`)!==void 0)??"by number"}function _v(e,t){let n=_M(e),o=i=>({..._e("run",e,["on_top","buried"]),...gM[i]});return mi(e)==="drizzle"?s`<p class="aside">A drizzle lies on the surface it covers.</p>`:mi(e)==="bought"?s`<p class="aside">What is bought is counted; where it sits is not checked.</p>`:M({name:`${e} where`,pointers:[`${e}/on_top`,`${e}/buried`],summary:"Where it goes",body:()=>s` ${A({question:"Where does it go?",at:e,is_told_elsewhere:!0,chosen:n,answers:[["on_top","On top, pressed in"],["buried","Buried in the pour"],["by number","Not placed, only counted"]],puts:o})}
      ${n==="on_top"?$M(`${e}/on_top`):n==="buried"?wM(e,t):s`<p class="aside">It is counted and weighed; its position is not checked.</p>`}`})}function $M(e){return s`<div class="row">
      ${h({label:"Pressed into the top",at:`${e}/pressed_in`,unit:"mm"})}
      ${h({label:"Flat of the peak, across",at:`${e}/peak_flat`,unit:"mm",optional:!0})}
    </div>
    <p class="hint">
      Pressed in 0 mm, it is only set down. The flat of the peak is what it stands on, if you measured it.
    </p>
    ${$v(e,"It is turned")}`}function $v(e,t){let n=o=>h({label:`About ${o}`,at:`${e}/turn/${o}`,unit:"deg",optional:!0,short:!0});return M({name:`${e} turn`,pointers:[`${e}/turn`],summary:t,body:()=>s` <div class="row">${["x","y","z"].map(n)}</div>
        <p class="hint">Degrees about its middle, x first, from how it was cast. A rod lies along x.</p>`})}var bM=[["level","Find places: upright, at one height"],["layered","Find places: upright, in several levels"],["free","Find places: turned any way"],["said","I say where"]];function wM(e,t){let n=`${e}/buried`,o=t===k(je).findIndex(l=>l.buried!==void 0),i=g("run",`${n}/places`)!==void 0?"said":g("run",`${n}/arrange`),r=g("run",`${n}/placed`);return s`${W("run",n)}
  ${h({label:"Cover wanted all round",at:`${n}/cover`,unit:"mm",hint:"Batter between the embed and wall, floor, pour line and the next one.",term:o?"embed":void 0})}
  ${A({question:"When is it set in?",at:`${n}/placed`,chosen:r,answers:[["before the pour","Before the pour"],["pressed in after","Pressed in after"]],puts:l=>l,hint:"Pressed in, it stays where it is once the batter is at a firm trace.",term:o?"trace":void 0})}
  ${A({question:"Where in the pour?",at:e,asked_at:`${n}/arrange`,chosen:i,answers:bM,puts:l=>vM(e,l)})}
  ${i==="said"?xM(e,t):d}`}var yM=()=>s`<svg
    class="places"
    viewBox="0 0 216 84"
    role="img"
    aria-label="From above, x is counted from the middle to the right and y to the back; from the side, the height from the floor to its lowest point."
  >
    ${R`<g class="axes"><path d="M10 14H94V70H10Z M52 42H76M76 42V26M52 14V70M10 42H94" />
      <path d="M122 20L130 70H198L206 20M178 70V52" /></g>
    <circle class="shaded decorate" cx="76" cy="26" r="7" /><circle class="shaded decorate" cx="178" cy="45" r="7" />
    <text x="60" y="52">x</text><text x="80" y="40">y</text><text x="182" y="65">height</text>
    <text x="10" y="82">from above</text><text x="130" y="82">from the side</text>`}
  </svg>`,bv={x:"",y:"",height:""};function vM(e,t){let n=_e("run",`${e}/buried`,["arrange","places"]);if(t!=="said")return{...g("run",e),buried:{...n,arrange:t}};let o=Number(g("run",`${e}/${Es(e)}`)),i=Array.from({length:o>=1&&o<=50?o:1},()=>bv);return{..._e("run",e,["per_piece","per_cast"]),[wv(e)]:i.length,buried:{...n,places:i}}}var wv=e=>dt()?"per_cast":Es(e)??"per_piece";function kM(e){let t=(n,o)=>{let i=["per_piece","per_cast"].reduce((r,l)=>F(r,`${e}/${l}`,void 0),n);return F(i,`${e}/${wv(e)}`,o)};return{at:`${e}/buried/places`,least:1,and:t}}function xM(e,t){let n=kM(e),o=k(n);return s`${yM()}
    <p class="hint">
      x: right of the middle; y: behind it; either below zero for the other side. Height: of its lowest point above the
      floor.
    </p>
    ${o.map((i,r)=>{let l=`${n.at}/${r}`,u=c=>h({label:`Place ${r+1}: ${c}`,at:`${l}/${c}`,unit:"mm",short:!0});return s`<div class="part" id=${E(n,r)} role="group" aria-label="Place ${r+1} of ${So(t)}">
        ${W("run",l)}
        <div class="row">
          ${u("x")} ${u("y")} ${u("height")} ${J(n,r,`place ${r+1} of ${So(t)}`)}
        </div>
        ${$v(l,`Place ${r+1} is turned`)}
      </div>`})}
    ${ee(n,"Add a place",()=>U(n,bv,"Place"))}
    <p class="aside">${o.length} in each.</p>`}var vv=e=>`${e} made`;function TM(){let e=lr(k(je).length),t=dt()?{}:{per_piece:""};ue("set-up decorate");for(let n of[vv(e),`${e} where`])Ge("run",n);U(je,{name:"",material:"",...t,density:"",spares:"",melt_loss:"",left_in_jug:""},"Decoration")}function kv(){let[e,t]=[k(je).length>0,k(Et).length>0];return s`${ee(je,e?"Add another decoration":"Add a decoration",TM)}
  ${ee(Et,t?"Add another dust":"Add a dust",hv)}`}function xv(e){let t=lr(e);return s` ${W("run",t)} ${PM(t)}
    <div class="row">
      ${SM(t)} ${h({label:"Spares",at:`${t}/spares`,unit:"%",short:!0})}
      ${mi(t)==="bought"?d:RM(t)}
    </div>
    ${_v(t,e)} ${vo("run",t,So(e))}`}var RM=e=>s`${h({label:"Lost in melting",at:`${e}/melt_loss`,unit:"%",short:!0})}
  ${h({label:"Left in the jug per tray fill",at:`${e}/left_in_jug`,unit:"g",short:!0})}
  ${h({label:"Density when set",at:`${e}/density`,unit:"g/ml",short:!0})}`;function SM(e){let t=Es(e),n=te("run",`${e}/buried/places`).length;if(n&&n===g("run",`${e}/${t}`)&&!(dt()&&t==="per_piece"))return s``;let o=t==="per_cast"?dt()?"In each loaf":"In each cast":dt()?"On each bar":"On each piece",i=r=>({..._e("run",e,["per_piece","per_cast"]),[r]:t?g("run",`${e}/${t}`):""});return s`${dt()?A({question:"Counted by",at:e,is_told_elsewhere:!0,chosen:t,answers:[["per_piece","Bar"],["per_cast","Whole loaf"]],puts:i}):d}
  ${t?h({label:o,at:`${e}/${t}`,count:!0,short:!0}):d}`}var AM={mould:{mould:"",fill:{below_brim:""}},rod:{rod:{diameter:"",length:""}},drizzle:{drizzle:{area:"",thickness:""}},bought:{bought:{}}},yv={density:"",melt_loss:"",left_in_jug:""};function DM(e,t){let n=["mould","moulds_owned","fill","cast_as","rod","drizzle","bought",...t==="drizzle"||t==="bought"?["on_top","buried"]:[],...t==="bought"?[...Object.keys(yv),"time_per_tray_fill"]:[]],o=mi(e)==="bought"&&t!=="bought"?yv:{};return{..._e("run",e,n),...o,...AM[t]}}function PM(e){let t=mi(e),n=["name","material","mould","moulds_owned","fill","cast_as","rod","drizzle","bought","time_per_tray_fill"].map(o=>`${e}/${o}`);return M({name:vv(e),pointers:n,summary:"What it is and how it is made",is_needed:!t,body:()=>s` <div class="row">
          ${h({label:"What it is called",at:`${e}/name`})}
          ${h({label:t==="bought"?"What is bought":"What is melted for it",at:`${e}/material`})}
        </div>
        <p class="hint">${t==="bought"?"It has a price by the piece.":"The price goes by what is melted."}</p>
        ${A({question:"How is it made?",at:e,is_told_elsewhere:!0,chosen:t,answers:[["mould","Cast in a mould"],["rod","A round rod, cut to length"],["drizzle","Drizzled over"],["bought","Bought, and only counted"]],puts:o=>DM(e,o)})}
        ${t?OM[t](e):d}
        ${t==="bought"?d:h({label:"To fill all trays once, setting included",at:`${e}/time_per_tray_fill`,unit:"min",optional:!0})}`})}var OM={mould:MM,rod:e=>s`<div class="row">
      ${h({label:"Rod, diameter",at:`${e}/rod/diameter`,unit:"mm",short:!0})}
      ${h({label:"Rod, length",at:`${e}/rod/length`,unit:"mm",short:!0})}
    </div>`,drizzle:e=>s`<div class="row">
      ${h({label:"Area covered",at:`${e}/drizzle/area`,unit:"cm2",short:!0})}
      ${h({label:"Thickness",at:`${e}/drizzle/thickness`,unit:"mm",short:!0})}
    </div>`,bought:e=>h({label:"One weighs",at:`${e}/bought/weighs`,unit:"g",optional:!0,short:!0,hint:"Weigh ten. A label needs it."})};function MM(e){let t=g("run",`${e}/fill/depth`)===void 0?"below_brim":"depth";return s`${zi("Cast in",`${e}/mould`,a.files?.moulds)}
  ${A({question:"Filled to a line",at:`${e}/fill`,chosen:t,answers:[["below_brim","below the brim"],["depth","above the floor"]],puts:n=>({[n]:""})})}
  ${t==="below_brim"?h({label:"Filled to, below the brim",at:`${e}/fill/below_brim`,unit:"mm",hint:"0 mm is level full."}):h({label:"Filled to, above the floor",at:`${e}/fill/depth`,unit:"mm"})}
  ${A({question:"What makes one?",at:`${e}/cast_as`,chosen:g("run",`${e}/cast_as`),answers:[["one cast","One cast"],["two halves","Two halves, joined at the flat"]],puts:n=>n})}`}var Nt=()=>a.plan?.piece.cost?.materials.map(e=>e.name)??[],ne=e=>a.fats.find(t=>t.id===e)?.name??e,zm=8;function fi({key:e,label:t,offers:n,among:o,taken:i,take:r}){let l=`find-${e}`,u=a.finding?.key===e?a.finding.text:"",c=(u.trim()?FM(u,o):n).filter(y=>!i(y)),p=y=>{f({finding:void 0}),r(y)},m=u.trim(),_=m!==""&&!i(m)&&!c.some(y=>tt(ne(y))===tt(m)),b=()=>{if(!m)return;let y=c.find(V=>tt(ne(V))===tt(m)||tt(V)===tt(m)),T=c.length===1?c[0]:void 0;(y??T??_)&&p(y??T??m)};return s`<div class="picker" role="group" aria-labelledby="${l}-label">
    <p class="question" id="${l}-label">${t}</p>
    <div class="field">
      <label for=${l}>Find it by its name</label>
      <input
        id=${l}
        .value=${u}
        @input=${y=>f({finding:{key:e,text:y.target.value}})}
        @keydown=${y=>{y.key==="Enter"&&b()}}
        autocomplete="off"
        spellcheck="false"
      />
    </div>
    <div class="choice">
      ${c.slice(0,zm).map(y=>s`<button type="button" @click=${()=>p(y)}>${ne(y)}</button>`)}
      ${_?s`<button type="button" @click=${()=>p(m)}>Add "${m}"</button>`:d}
    </div>
    ${c.length>zm?s`<p class="hint">${c.length-zm} more: type a part of the name.</p>`:d}
  </div>`}function FM(e,t){let n=t?[]:Nt(),o=tt(e).split(/\s+/).filter(Boolean),i=a.fats.filter(l=>Hn(l,e)!==void 0).map(({id:l})=>l),r=l=>o.every(u=>tt(ne(l)).includes(u));return[...new Set([...n.filter(l=>r(l)||i.includes(l)),...i])]}var Vn="/packaging",dr={at:Vn,stays:!0},Tv={material:"",each_piece:""},LM={studio:void 0,own:[Tv],nothing:[]},BM=()=>g("run",Vn)===void 0?"studio":k(dr).length?"own":"nothing";function Km(){let e=BM();return M({name:"packaging",pointers:[Vn],summary:`Packaging${CM(e)}`,body:()=>s`${A({question:"What goes round each piece",at:Vn,is_told_elsewhere:e==="own",chosen:e,answers:[["studio","As the studio packs"],["own","Of this run's own"],["nothing","Nothing"]],puts:t=>LM[t],then:t=>t==="own"?`${Vn}/0/material`:Vn})}
      ${e==="own"?WM():d}`})}function CM(e){if(e==="studio")return"";if(e==="nothing")return": none";let t=te("run",Vn).map(({material:n})=>ne(String(n??""))).filter(Boolean);return t.length?`: ${t.join(", ")}`:""}var WM=()=>s`<p class="hint">In place of all that the studio packs with. Its price is that of its pack.</p>
    ${k(dr).map((e,t)=>{let n=String(e.material||`packaging ${t+1}`);return s`<div class="row" id=${E(dr,t)}>
        ${h({label:`Material ${t+1}`,at:`${Vn}/${t}/material`,hint:"As its pack or price calls it."})}
        ${h({label:`Of it, each piece ${t+1}`,at:`${Vn}/${t}/each_piece`,unit:"pieces",short:!0,hint:"How many, or a mass such as 3 g"})}
        ${J(dr,t,n)}
      </div>`})}
    ${ee(dr,"Another material",()=>U(dr,Tv,"A material"))}`;function Rv(){let e="/lye_pot",t=g("run",e)!==void 0;return!t&&!yt()?d:s`<div class="labelled">
      ${jc(e,"Make one pot of lye solution for both",t,{})}${qn("lye_solution")}
    </div>
    ${Zt("lye_solution")}
    ${t?h({label:"The empty pot weighs",at:`${e}/pot_tare`,unit:"g",optional:!0,hint:"If you know it, you are told what the full pot is to weigh."}):d}`}function Sv(e){let t={at:"/bottles"},n=k(t);return M({name:"bottles",pointers:[t.at],summary:"Bottles of fragrance to use up",is_needed:n.length>0,body:()=>s` <p class="hint">
          A whole bottle is divided so that every batter gets the same percentage, not half
          each.${e&&we(e)?` Weights are of ${we(e)}.`:""}
        </p>
        ${n.map((o,i)=>{let r=`${t.at}/${i}`,l=String(o.name)||`bottle ${i+1}`;return s`<div class="part" id=${E(t,i)} role="group" aria-label=${l}>
            <div class="part-head">
              <p class="part-title">${l}</p>
              ${J(t,i,l)}
            </div>
            ${W("run",r)}
            <div class="row">
              ${h({label:"Fragrance, as in the formulas",at:`${r}/name`})}
              ${h({label:"The bottle holds",at:`${r}/holds`,unit:"g",short:!0})}
            </div>
            ${e?IM(e,i,l):d}
          </div>`})}
        ${ee(t,"Use up a bottle",()=>U(t,{name:"",holds:""},"bottle"))}`})}function IM(e,t,n){let o=e.bottles?.[t];return o?.name!==n?d:o.parts.map((i,r)=>I({key:`bottle.${t}.${r}`,label:`Into the ${i.part.toLowerCase()}`,note:`${S(i.percent_of_batter,2)} % of the batter`,shown:X(a.units,ae(i,"")),size:"weigh",of:`${e.place}.bottles.${t}.parts.${r}.g`}))}var Ns="/label",Vm=()=>g("run",Ns)!==void 0;function Av(){let t=g("studio",ur.studio)!==void 0?{weight_spread:""}:{market:""};ue("set-up label"),q("run","Label added",Ns,t,L("lane-label"))}function Dv(){return s`${W("run",Ns)} ${EM()}
    <button type="button" @click=${()=>q("run","Label removed",Ns,void 0)}>Remove the label</button>`}var ur={run:"/label/market",studio:"/label/market"};function Qm(){let{of:e,at:t}=ss(ur);return s`${A({of:e,question:"Where it is sold",at:e==="run"?Ns:t,asked_at:t,chosen:g(e,t)||void 0,answers:[["EU","In the EU"],["US","In the US"]],puts:n=>e==="run"?NM(n):n})}
  ${yo("Where it is sold",[ur])}`}function EM(){let e=g("run","/label/weighed_pieces")===void 0?"said":"weighed";return s`${Qm()}
  ${A({question:"How much pieces differ",at:"/label",is_told_elsewhere:!0,chosen:e,answers:[["weighed","I have weighed finished pieces"],["said","I say how much they differ"]],puts:jM})}
  ${e==="weighed"?HM():s`<div class="row">
          ${h({label:"Heavier or lighter by",at:"/label/weight_spread",optional:!0,short:!0,hint:"Such as 2 g or 3 %."})}
          ${h({label:"Pour line higher or lower by",at:"/label/pour_line_off_by",unit:"mm",optional:!0,short:!0})}
        </div>`}
  ${h({label:"Your labels already say",at:"/label/printed_weight",unit:"g",optional:!0,hint:"It is checked against your pieces."})}
  ${bn(ur)==="EU"||g("run",Jm)!==void 0?jc(Jm,"With the e mark",g("run",Jm)===!0,!0):d}`}var Jm="/label/e_mark";function NM(e){return{..._e("run","/label",e==="EU"?[]:["e_mark"]),market:e}}function jM(e){let t=_e("run","/label",["weighed_pieces","weight_spread","pour_line_off_by"]);return e==="weighed"?{...t,weighed_pieces:["","",""]}:t}function HM(){let e={at:"/label/weighed_pieces",least:3};return s`<div class="trials">
      ${k(e).map((t,n)=>s`<div class="row" id=${E(e,n)}>
            ${h({label:`Piece ${n+1}`,at:`${e.at}/${n}`,unit:"g",short:!0})}
            ${J(e,n,`piece ${n+1}`)}
          </div>`)}
    </div>
    ${ee(e,"One more piece",()=>U(e,"","piece"))}`}function Pv(e){let{batches:t,fillings:n,cavities:o,to_stock:i}=e.pieces,r=e.batches.map(c=>`${Xc(e)?`${c.count} of `:""}${nn(e,c)}`),l=`Made in ${t} batches${Xc(e)?": ":" of "}${Ne(r)}; ${$l(n,o)}.`,u=e.batch_limits.filter(c=>c.sets);return s`<div class="batches-told of-plan">
    ${Ye(e)?s`<p><b>${l}</b></p>`:d}
    ${i>0?s`<p>
            ${z(i,e.cut?"bar":"piece")} beyond those to sell ${i===1?"goes":"go"} to
            stock.
          </p>`:d}
    ${u.length?s`<p><span class="called">What sets a batch:</span> ${u.map(c=>c.text).join(" ")}</p>`:d}
    ${e.around.length?s`<p><span class="called">One fewer, one more:</span> ${e.around.map(c=>c.text).join(" ")}</p>`:d}
  </div>`}var Ov=e=>e.map(t=>`M${t.map(([n,o])=>`${n.toFixed(2)} ${(-o).toFixed(2)}`).join("L")}Z`).join("");function Mv(e,t){let n=t.brim-t.floor,o=e.pour.poured_to_mm??e.pour.depth_mm,i=e.decorations?.find(c=>!c.buried&&c.cavity_fills>0),r=i?Cv(i):0,l=i?i.on_top?.stands_proud_mm??1.9*r:0,u=e.pipe?qM(e,t,n,l):0;return{brim:n,line:o,topping:u,ball:r,proud:l,top:Math.max(n,(e.pipe?n:o)+u+l)}}function qM(e,t,n,o){let i=Yt($(a.run.now,"/pipe/envelope/height"));if(i!==void 0)return i;let r=(e.piece.size?.height_mm??0)-n-o;if(r>1)return r;let[l,u]=ec(t,t.brim-.01),c=Math.PI/4*(u-l)**2;return 1500*e.pipe.visible_each_ml/c}function Gm(e,t){let[n,o]=ec(e,e.brim-.01),i=(n+o)/2,r=3,l=m=>(o-n)/2*Math.sqrt(1-(m/(r+.3))**2),u=m=>-(t.brim+t.topping*m/r),c=(m,_,b)=>{let y=i+b*(Math.max(l(m),l(_))+(o-n)*.035);return`C${y} ${u(m)} ${y} ${u(_)} ${i+b*l(_)*(_?.94:1)} ${u(_)}`},p=`M${n} ${u(0)}`;for(let m=0;m<r;++m)p+=c(m,m+1,-1);p+=`L${i+l(r)*.94} ${u(r)}`;for(let m=r;m>0;--m)p+=c(m,m-1,1);return`${p}Z`}var js=(e,t)=>e===t?`shaded ${t}`:"plain";function Ao(e,t,n=d){return s`${Fv(e,t,n)}
  ${e==="decorate"&&Ym(t)?s`<p class="hint">${Ym(t)}</p>`:d}`}var Do=(e,t)=>s`<div class="small-view">${Fv(e,t,d)}</div>`;function Fv(e,t,n){let o=a.measured?.outline;if(!o)return s`<p class="drawing hint">${a.measuring_failed??"Reading the mould ..."}</p>`;let i=Mv(t,o),r=o.right-o.left,l=Math.max(6,r*.1),u={x:o.left-l,y:-i.top-l,w:r+2*l,h:i.top+2*l};return s`<div class="drawing">
    <svg viewBox="${u.x} ${u.y} ${u.w} ${u.h}" role="img" aria-label=${XM(e,t)}>
      ${UM(e)} ${zM(e,t,o,i)} ${JM(e,t,o,i)} ${VM()}
      ${QM(e,t,o,i)} ${ZM(e,t,o,i)}
      ${R`<line class="pour-line" x1=${u.x+1} x2=${u.x+u.w-1} y1=${-i.line} y2=${-i.line} />
        <line class="brim" x1=${u.x+1} x2=${o.left-1} y1=${-i.brim} y2=${-i.brim} />
        <line class="brim" x1=${o.right+1} x2=${u.x+u.w-1} y1=${-i.brim} y2=${-i.brim} />`}
    </svg>
    ${n}
  </div>`}function Lv(e,t){let n=a.measured.outline,o=Mv(e,n),i=n.right-n.left,r=Math.max(6,i*.1),l=o.top+2*r;return{share:(o.top+r-t)/l,per_mm:1/l,w:i+2*r,h:l}}function UM(e){return R`<defs>
    <pattern id="hatch-${e}" width="2.4" height="2.4" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <line class="hatch" x1="0" y1="0" x2="0" y2="2.4" /></pattern>
    <pattern id="dots-${e}" width="2" height="2" patternUnits="userSpaceOnUse"><circle class="dot" cx="1" cy="1" r="0.35" /></pattern>
    <clipPath id="cavity-${e}"><path clip-rule="evenodd" d=${Ov(Bv())} /></clipPath>
  </defs>`}function Bv(){let e=a.measured.outline;return e.loops.map(t=>t.map(([n,o])=>[n,o-e.floor]))}function zM(e,t,n,o){let i=e==="cut"?"pour":e,r=t.pour.layers??[],l=(r.length?r.map(u=>KM(u,n)):[[o.line,o.line]]).map(([u,c])=>`M${n.left} 0V${-u}L${n.right} ${-c}V0Z`);return R`<g clip-path="url(#cavity-${e})">${l.map((u,c)=>R`<path class="whole" d=${u} /><path class="${js(i,"pour")} band${c%3}" d=${u} />${i==="pour"&&c%2===0?R`<path fill="url(#hatch-${e})" d=${u} />`:d}`).reverse()}</g>`}function KM(e,t){let{surface:n,to_mm:o}=e;if(!n)return[o,o];let i=r=>n.over_origin_mm+n.rise_x*r+n.rise_y*t.cut_y;return[i(t.left),i(t.right)]}function JM(e,t,n,o){if(!t.pipe||o.line>=o.brim)return d;let i=Math.min(1,(parseFloat(String($(a.run.now,"/pipe/fills_headspace")).replace(",","."))||0)/100),r=(n.right-n.left)*i,l=(n.left+n.right)/2;return R`<g clip-path="url(#cavity-${e})"><rect class=${js(e,"pipe")} x=${l-r/2} width=${r}
    y=${-o.brim} height=${o.brim-o.line} /></g>`}function VM(){return R`<path class="wall" fill-rule="evenodd" d=${Ov(Bv())} />`}function QM(e,t,n,o){let i=(n.left+n.right)/2,r=t.pipe?o.brim:o.line,l=t.decorations?.flatMap((u,c)=>(u.buried?.embeds??[]).map(p=>({embed:p,one:u,i:c})))??[];return R`
    ${t.pipe?R`<path class=${js(e,"pipe")} d=${Gm(n,o)} />${e==="pipe"?R`<path fill="url(#dots-pipe)" d=${Gm(n,o)} />`:d}`:d}
    ${e==="dust"?GM(t,n,o):d}
    ${o.ball?R`<circle class=${js(e,"decorate")} cx=${i} cy=${-(r+o.topping+o.proud-o.ball)} r=${o.ball} />`:d}
    ${l.map(({embed:u,one:c,i:p})=>YM(js(e,"decorate"),i,u,c,p))}`}function GM(e,t,n){let o=`M${t.left} ${-n.line}H${t.right}`;return R`<path class="powder" d=${e.pipe?Gm(t,n):o} />`}function YM(e,t,n,o,i){let[r,l]=[t+n.middle_mm[0],n.middle_mm[2]],u=Yt($(a.run.now,`/decorations/${i}/rod/diameter`)),c=Yt($(a.run.now,`/decorations/${i}/rod/length`));if(!u||!c)return R`<circle class=${e} cx=${r} cy=${-l} r=${Cv(o)} />`;let[p,m]=[n.turn[0][0],n.turn[2][0]],_=Math.min(1,Math.hypot(p,m)),b=u/2*Math.sqrt(1-_*_),y=c*_+2*b,T=-180/Math.PI*Math.atan2(m,p);return R`<rect class=${e} x=${-y/2} y=${-u/2} width=${y} height=${u} rx=${b} ry=${b?u/2:0}
    transform="translate(${r} ${-l}) rotate(${T})" />`}var Cv=e=>Math.cbrt(3e3*e.volume_each_ml/(4*Math.PI));function Ym(e){let t=(e.decorations??[]).filter((n,o)=>$(a.run.now,`/decorations/${o}/rod`)===void 0&&(n.buried||n.cavity_fills>0)).map(n=>n.name);return t.length?`Drawn as a ball of its volume, whatever its shape: ${t.join(", ")}.`:""}function ZM(e,t,n,o){if(e!=="cut"||!t.cut)return d;let i=Math.max(t.cut.rows,t.cut.columns);return R`${Array.from({length:i-1},(r,l)=>{let u=n.left+(n.right-n.left)*(l+1)/i;return R`<line class="knife" x1=${u} x2=${u} y1=${-o.line} y2="0" />`})}`}function XM(e,t){let n=x($e(a.units,t.pour.below_brim_mm));return`The piece from the side, to scale; ${{pour:"the pour",pipe:"the topping",decorate:"the decoration",dust:"what powder may fall on",cut:"the loaf with its cuts"}[e]} is shaded. Pour line ${n} below the brim. ${Ym(t)}`.trim()}var eF=e=>`set-up ${e}`;function ut({name:e,title:t,drawing:n,result:o,about:i,form:r}){let l=eF(e),u=()=>Lt({part:t,fold:l},r);if(Un())return s`${u()}`;i.some(([m,_])=>Qe(m,_))&&ue(l);let c=a.open.has(l),p=Ui().filter(({folds:m})=>m.includes(l)).length;return s`<section class="lane ${e} ${c?"is-open":""}" aria-labelledby="lane-${e}">
    <div class="part-line">
      ${c||!n?d:n()}
      <div class="part-told">
        <h2 id="lane-${e}" tabindex="-1">${t}</h2>
        ${o} ${p?s`<p class="lacks">${p} still needed</p>`:d}
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
    ${c?s`<div class="lane-body">${u()}</div>`:d}
  </section>`}var Re=e=>s`<p class="order ${a.is_old&&a.plan?"old":""}">${e}</p>`;var Wv=()=>k(je).length>0,Iv=()=>k(Et).length>0;function Ev(e,t,n,o){return e?.length===t.length?e[o]:e?.find(i=>i.name===n)}function Nv(e){let t=e?k(je).flatMap((n,o)=>qv(e,o)??[]):[];return ut({name:"decorate",title:"Decorate",drawing:e&&(()=>Do("decorate",e)),result:t.length?t.map(n=>oF(e,n)):Re(jv(je,So)),about:[["run",je.at]],form:()=>s`${e?s`<div class="side">${Ao("decorate",e)}</div>`:d}
        <div class="weights">${e?k(je).map((n,o)=>tF(e,o)):d}</div>
        ${Uv(je,So,xv)}`})}var jv=(e,t)=>`${k(e).map((n,o)=>t(o)).join(", ")}, not yet with figures.`;function tF(e,t){let n=qv(e,t);return n?iF(e,n,t):d}function Hv(e){let t=e?.dust?.length?k(Et).map((n,o)=>sF(e,o)):void 0;return ut({name:"dust",title:"Dust",drawing:e&&(()=>Do("dust",e)),result:t??Re(jv(Et,Fd)),about:[["run",Et.at]],form:()=>s`<div class="side">${e?Ao("dust",e):d}</div>
        <div class="weights">${e?k(Et).map((n,o)=>aF(e,o)):d}</div>
        ${Uv(Et,Fd,gv)}`})}var qv=(e,t)=>Ev(e.decorations,k(je),O("run",`/decorations/${t}/name`),t);function Uv(e,t,n){return s`<div class="all-questions">
    ${k(e).map((o,i)=>s`<section class="questions" id=${E(e,i)} aria-labelledby="${E(e,i)}-title">
          <div class="part-head">
            <h3 id="${E(e,i)}-title">${t(i)}</h3>
            ${J(e,i,t(i))}
          </div>
          ${Lt({part:t(i)},()=>n(i))}
        </section>`)}
  </div>`}function nF(e,t){return s`<h3>${e.name}</h3>
    ${I({key:`decorations.${t}.count`,label:"Bought, spares included",shown:[String(e.casts),""],of:`decorations.${t}.casts`})}`}function oF(e,t){if(t.bought)return Re(s`<b>${t.casts}</b> × ${t.name}, bought.`);let n=t.tray_fills>0?`, in ${t.tray_fills} tray ${t.tray_fills===1?"fill":"fills"}`:"",o=x(X(a.units,ae(t,"make_")));return Re(s`Cast <b>${t.casts}</b> of ${t.name} ahead${n}, from <b>${o}</b> of
      ${t.material}${Ye(e.whole)?", for the whole run":""}.`)}function iF(e,t,n){return t.bought?nF(t,n):s`<h3>${t.name} ${Ye(e.whole)?s`<small>for the whole run</small>`:d}</h3>
    ${I({key:`set-up.decorations.${n}.make`,label:`Melt of ${t.material}`,shown:X(a.units,ae(t,"make_")),of:`decorations.${n}.make_g`})}
    ${I({key:`decorations.${n}.each`,label:"Each weighs",note:`${S(t.volume_each_ml,2)} ml`,shown:H(a.units,t.mass_each_g??0,2),of:`decorations.${n}.mass_each_g`})}
    ${t.casting_s?s`<p>${bo(t.casting_s)} of casting.</p>`:d} ${rF(t,n)}`}function rF(e,t){let{on_top:n,buried:o}=e;if(!n&&!o)return d;let i=l=>l===null?"not known":x($e(a.units,l)),r=l=>{let u=(o?.embeds??[]).map(l).filter(c=>c!==null);return u.length?x($e(a.units,Math.min(...u))):"nothing near"};return s`<h4>Fit of ${e.name}</h4>
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
              </div>`:d}
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
                <dd>${S(o.displaced_ml,1)} ml</dd>
              </div>`:d}
    </dl>
    ${ei(`decorations.${t}.fit`,"How the fit is measured",`decorations.${t}.${n?"on_top":"buried"}`)}`}function sF(e,t){let n=zv(e,t);if(!n)return d;let o=we(e);return Re(s`<b>${x(X(a.units,ae(n,"")))}</b> of ${n.name}${o?` for ${o}`:""}.`)}var zv=(e,t)=>Ev(e.dust,k(Et),O("run",`/dust/${t}/name`),t);function aF(e,t){let n=zv(e,t);if(!n)return d;let o=g("run",`/dust/${t}/per_piece`)!==void 0,i=n.exposed_cm2===0&&!o,r=I({key:`set-up.dust.${t}`,label:n.name,note:we(e),shown:X(a.units,ae(n,"")),of:`${e.place}.dust.${t}.g`});return s`${r}${i?s`<p class="alarm">
          No topping or decoration is exposed, so the amount is zero: give the weight for one piece instead.
        </p>`:d}`}function Kv(e){let t=e?.cut;return ut({name:"cut",title:"Cut",drawing:e&&(()=>Do("cut",e)),result:t?lF(e,t):Re("Cut into bars, not yet with figures."),about:[["run","/cut"],["studio","/kerf"]],form:()=>s`${t?dF(e,t):d}
        <div class="all-questions">${Eb()}</div>`})}var lF=(e,t)=>Re(s`Cut <b>${t.bars_each} bars</b> from each, ${t.columns} by ${t.rows}; a bar is
      ${x(H(a.units,e.piece.fresh_g))} on average, fresh.`);function dF(e,t){return s`<div class="side">${Ao("cut",e)}</div>
    <div class="weights">
      ${I({key:"cut.bar",label:"A bar on average, fresh",note:uF(t),shown:H(a.units,e.piece.fresh_g),of:"cut.bars_each"})}
      ${I({key:"cut.offcuts",label:"Offcuts",shown:H(a.units,t.offcuts_g),of:"cut.offcuts_g"})}
      ${cF(t)}
    </div>`}function uF(e){let t=e.bars.map(i=>i.fresh_g),n=Math.floor(Math.min(...t)*10)/10,o=Math.ceil(Math.max(...t)*10)/10;return`${S(n,1)} to ${S(o,1)} g`}function cF(e){return e.one_more?.length?s`<ul class="limits">
    ${e.one_more.map(t=>s`<li>Cut to ${t.size_text} along ${t.direction}: ${t.bars} bars from each.</li>`)}
  </ul>`:d}function Jv(e){return ut({name:"label",title:"Label",drawing:mF,result:Re(pF(e)),about:[["run","/label"]],form:()=>s`<div class="more">${Dv()} ${e?Nm(e):d}</div>`})}function pF(e){let t=e?.piece.label_g;return!e?.label||t===null||t===void 0?"A draft of the label, not yet with figures.":s`Net weight for the label <b>${x(H(a.units,t,0))}</b>, sold in the ${e.label.market}.`}var mF=()=>s`<div class="small-view">
    <svg class="jug-sign" viewBox="0 0 60 50" aria-hidden="true">
      ${R`<path class="plain" d="M8 12H40L54 26L40 40H8Z" /><path class="wall" d="M8 12H40L54 26L40 40H8ZM16 21H36M16 27H32M16 33H36" />`}
    </svg>
  </div>`;var Qn=e=>h({...e,of:"studio"});function Vv(){let e=(t,n,o)=>M({of:"studio",name:`ready ${t}`,pointers:[t],summary:s`<span>${n}<small>${he("studio",t).join(", ")}</small></span>`,body:o});return s`<section class="questions of-studio" aria-label="Standing ready">
    <h3>Standing ready</h3>
    <div class="folds">
      ${e("/lye_solutions","Lye solutions",_F)} ${e("/blends","Melted blends of fats",wF)}
    </div>
  </section>`}var fF=["/prices","/packs","/have","/waste"],hF=e=>(t,n)=>fF.reduce((o,i)=>$(o,`${i}/${j(e)}`)===void 0?o:ds(o,i,e,n),t);function gF(e,t){let n=i=>i===e?t:Array.isArray(i)?i.map(r=>r===e?t:r):i&&typeof i=="object"&&i.name===e?{...i,name:t}:i,o=["/pour/lye_from","/pipe/lye_from","/pour/blend","/pipe/blend"];return i=>o.reduce((r,l)=>{let u=$(r,l);return u===void 0?r:F(r,l,n(u))},i)}function Qv({at:e,name:t,label:n,body:o}){let i=(l,u)=>Kt([["studio",l],["run",gF(t,u)]]),r=`${e}/${j(t)}`;return s`<div class="part" role="group" aria-label=${t}>
    <div class="part-head">
      <p class="part-title">${t}</p>
      ${oi("studio",e,t)}
    </div>
    ${W("studio",r)}
    <div class="row">${ls({of:"studio",at:e,name:t,label:n,also:hF(t),put:i})}</div>
    ${o}
    <div class="row">
      ${Qn({label:"Made on",at:`${r}/made_on`,date:!0,optional:!0,short:!0})}
      ${Qn({label:"Made by",at:`${r}/from`,optional:!0,short:!0})}
      ${Qn({label:"Note",at:`${r}/note`,optional:!0})}
    </div>
  </div>`}var cr="/lye_solutions",_F=()=>s`<p class="hint">
      Lye dissolved beforehand. A run weighs it in place of dry alkali and less water; choose it there, with the base or
      the topping.
    </p>
    ${he("studio",cr).map(e=>Qv({at:cr,name:e,label:"What you call it",body:$F(e)}))}
    ${Ji({of:"studio",at:cr,label:"Another solution, such as Lye jug A",add:"Add the solution",blank:{strength:"",strength_range:["",""],kept_at:""},then:e=>oe("studio",`${cr}/${j(e)}/alkali`)})}`;function $F(e){let t=`${cr}/${j(e)}`,n=O("studio",`${t}/alkali`),o=n||"alkali",i=O("studio",`${t}/strength`);return s`${A({of:"studio",question:"Which alkali is dissolved in it?",at:`${t}/alkali`,chosen:n||void 0,answers:[["NaOH","NaOH, sodium hydroxide"],["KOH","KOH, potassium hydroxide"]],puts:r=>r,then:()=>`${t}/strength`})}
    <div class="row">
      ${Qn({label:`Strength: pure ${o} in 100 g of the solution`,at:`${t}/strength`,unit:"%"})}
      ${Qn({label:"Coldest it stands",at:`${t}/kept_at`,hint:"With its unit: 18 \xB0C, 64 \xB0F. Strong lye crystallises in the cold."})}
    </div>
    <p role="status">${bF(i,o)}</p>
    <p class="question">By now it may be</p>
    <div class="row">
      ${Qn({label:"as weak as",at:`${t}/strength_range/0`,unit:"%",short:!0})}
      ${Qn({label:"or as strong as",at:`${t}/strength_range/1`,unit:"%",short:!0})}
    </div>
    ${W("studio",`${t}/strength_range`)}
    <p class="hint">An open jug grows stronger as water leaves it, and weaker as it takes up carbon dioxide.</p>
    ${ot({of:"studio",at:`${t}/made_from`,name:`what ${e} is dissolved of`,title:"Dissolved by yourself",add:"I dissolve it myself",blank:{purity:""},body:()=>s`<div class="row">
            ${Qn({label:`Purity of the dry ${o}`,at:`${t}/made_from/purity`,unit:"%",short:!0})}
          </div>
          <p class="hint">It then costs what its alkali and water cost, unless it has a price of its own.</p>`})}`}function bF(e,t){let n=/^\s*(\d+(?:[.,]\d+)?)\s*%\s*$/.exec(e)?.[1],o=Number(n?.replace(",","."));if(!n||o>=100)return`As much ${t} as water is 50 %.`;let i=r=>String(Math.round(r*100)/100);return`So ${i(o)} g of pure ${t} and ${i(100-o)} g of water in 100 g.`}var Hs="/blends",wF=()=>s`<p class="hint">
      Fats melted together beforehand. A run weighs the blend in place of what it holds of the formula's fats; choose it
      there, with the base or the topping.
    </p>
    ${he("studio",Hs).map(e=>Qv({at:Hs,name:e,label:"What you call it",body:yF(e)}))}
    ${Ji({of:"studio",at:Hs,label:"Another blend, such as Hard fats",add:"Add the blend",blank:{fats:[]},then:e=>L(`find-blend ${e}`)})}`;function yF(e){let t={of:"studio",at:`${Hs}/${j(e)}/fats`,stays:!0},n=k(t),o=i=>n.some(r=>r.fat===i);return s`${W("studio",t.at)}
  ${n.map((i,r)=>s`<div class="row" id=${E(t,r)}>
        ${Qn({label:ne(String(i.fat)),at:`${t.at}/${r}/share`,unit:"%",short:!0})}
        ${J(t,r,ne(String(i.fat)))} ${W("studio",`${t.at}/${r}/fat`)}
      </div>`)}
  ${n.length?s`<p class="total" role="status">
          ${Gi("Its fats",n.map(i=>i.share))}
        </p>`:d}
  ${fi({key:`blend ${e}`,label:n.length?"Another fat of it":"Which fats are in it?",offers:vF(),among:"fats",taken:o,take:i=>U(t,{fat:i,share:""},ne(i))})}`}var vF=()=>[...new Set(["pour","pipe"].flatMap(e=>{let t=a.formulas[e]?.now.fats;return Array.isArray(t)?t.map(n=>String($(n,"/fat")??"")).filter(Boolean):[]}))],Gv=e=>k({of:"studio",at:`${Hs}/${j(e)}/fats`}).map(({fat:t})=>String(t)),pr=e=>{let t=g("studio",`${cr}/${j(e)}`)??{},[n,o]=[t.alkali,t.strength].map(i=>String(i??""));return{alkali:n,words:[e,[n,o].filter(Boolean).join(" ")].filter(Boolean).join(": ")}};var qs=e=>`/${e}/lye_from`,Us=e=>`/${e}/blend`;function zs(e){let t=he("studio","/lye_solutions").length>0||g("run",qs(e))!==void 0,n=he("studio","/blends").length>0||g("run",Us(e))!==void 0;if(!t&&!n)return d;let o=[...Yv(e),Zv(e)].filter(Boolean).join(", ");return M({name:`/${e} ready`,pointers:[qs(e),Us(e)],summary:`From what stands ready${o&&`: ${o}`}`,body:()=>s`${t?xF(e):d} ${n?RF(e):d}`})}function Yv(e){let t=g("run",qs(e));return typeof t=="string"?[t]:te("run",qs(e)).map(String)}var kF=e=>te(e,"/alkali").map(t=>String($(t,"/alkali")));function xF(e){let t=qs(e),n=Y("run",t),o=Yv(e),i=kF(e),r=[...new Set([...he("studio","/lye_solutions"),...o])],l=r.filter(m=>o.includes(m)||i.includes(pr(m).alkali)),u=r.filter(m=>!l.includes(m)),c=Me("run",t),p=m=>{let{alkali:_}=pr(m),b=o.includes(m),y=o.filter(ze=>ze!==m&&(b||pr(ze).alkali!==_)),T=b?y:[...y,m],V=T.length>1?T:T[0];q("run",`${m}: ${b?"no":"yes"}`,t,V)};return s`<div class="field asked ${c?"wants":""}">
    <p class="question" id="${n}-label">
      Lye solution that is weighed in place of dry ${i.length?Ne(i):"alkali"}
    </p>
    <div class="choice" role="group" id=${n} tabindex="-1" aria-labelledby="${n}-label">
      ${l.map(m=>s`<button type="button" aria-pressed=${o.includes(m)?"true":"false"} @click=${()=>p(m)}>
            ${pr(m).words}
          </button>`)}
    </div>
    ${be(n,c,o.length?void 0:"None chosen: the alkali is weighed dry.")}
    ${u.length?s`<p class="hint">Of another alkali than this formula's: ${u.map(m=>pr(m).words).join(", ")}.</p>`:d}
  </div>`}var Zv=e=>{let t=g("run",Us(e));return typeof t=="string"?t:O("run",`${Us(e)}/name`)};function TF(e,t){let n=te(e,"/fats").map(({fat:r})=>String(r)),o=new Set(n.flatMap(r=>{let l=a.fats.find(({id:u})=>u===r);return l?[l.id,l.name,l.inci,...l.also_called]:[r]})),i=new Set([...o].map(r=>r.toLowerCase()));return Gv(t).every(r=>i.has(r.toLowerCase()))}var Zm="\0singly";function RF(e){let t=Us(e),n=Zv(e),o=[...new Set([...he("studio","/blends"),...n?[n]:[]])],i=o.filter(u=>u===n||TF(e,u)),r=o.filter(u=>!i.includes(u)),l=g("run",`${t}/share`)!==void 0;return s`${A({question:"Blend of fats that is weighed",at:t,chosen:n||Zm,answers:[[Zm,"None: each fat by itself"],...i.map(u=>[u,u])],puts:u=>u===Zm?void 0:u,hint:r.length?`With fats that this formula has not: ${r.join(", ")}.`:void 0})}
  ${n?l?s`<div class="row">
            ${h({label:`${n}: share of all fats of the formula`,at:`${t}/share`,unit:"%",optional:!0,short:!0})}
          </div>`:s`<p class="hint">As much of it is taken as the shares of its fats have room for.</p>
            <button
              type="button"
              @click=${()=>q("run","Its share",t,{name:n,share:""},oe("run",`${t}/share`))}
            >
              Take a share of my own
            </button>`:d}`}var Oo="/pour/layers",Po={at:Oo,in_order:!0},Xm=[["parts","Parts"],["depth","Thickness"],["mass","Weight in one"]],Bd=()=>k(Po);function SF(){let e=t=>Bd().some(n=>t in n);return Xm.map(([t])=>t).find(e)??(e("rest")?"depth":"parts")}function ek(e){let t=Bd(),n=SF();return t.length?s`<h3>
      Layers, lowest first ${e&&we(e)?s`<small>${we(e)}</small>`:d}
    </h3>
    ${A({question:"All of them by",at:Oo,is_told_elsewhere:!0,chosen:n,answers:Xm,puts:o=>DF(o,e)})}
    <div class="items">${t.map((o,i)=>PF(o,i,n,e))}</div>
    ${ee(Po,"One more layer on top",()=>U(Po,{name:AF(t),[n]:""},"layer"))}`:s`<p class="choice">
      ${ee(Po,"Pour it in layers",()=>U(Po,{name:"Layer 1",parts:1},"layer"))}
    </p>`}function AF(e){for(let t=e.length+1;;++t)if(!e.some(n=>n.name===`Layer ${t}`))return`Layer ${t}`}function tk(e,t,n){let o=e?.pour.layers?.[n];return o?.name===t.name?o:void 0}function DF(e,t){let n=Bd(),o=a.is_old?void 0:t,i=(r,l)=>{let u=tk(o,r,l);return e==="parts"||!u||e==="depth"&&"tilted"in r?"":e==="depth"?`${S(u.to_mm-u.from_mm,3)} mm`:`${S(u.mass_each_g,3)} g`};return n.map((r,l)=>{let u=Ld(l),c=e!=="parts"&&n.length>1&&l===n.length-1;return{...u,...c?{rest:!0}:{[e]:i(r,l)}}})}var Ld=e=>_e("run",`${Oo}/${e}`,[...Xm.map(([t])=>t),"rest"]);function PF(e,t,n,o){let i=`${Oo}/${t}`,r=String(e.name)||`Layer ${t+1}`,l=tk(o,e,t);return s`<div class="part" id=${E(Po,t)} role="group" aria-label="Layer ${r}">
    ${l&&o?OF(o,l,t):s`<p class="part-title">${r}</p>`} ${W("run",i)}
    ${FF(e,t,n,r)}
    ${o&&l?l.colours.map((u,c)=>MF(o,u,t,c)):d}
    ${M({name:i,pointers:["name","colours","tilted"].map(u=>`${i}/${u}`),summary:"Name, colours, tilt",body:()=>s` ${h({label:"Name of the layer",at:`${i}/name`})} ${WF(i,r)} ${IF(i,t)}
        ${J(Po,t,r)}`})}
  </div>`}function OF(e,t,n){return I({key:`pour.layer.${n}`,label:t.name,note:`${Lc($e(a.units,t.to_mm-t.from_mm))} thick, ${Lc(H(a.units,t.mass_each_g))} each`,shown:t.g_text===void 0?H(a.units,t.g):X(a.units,t),size:"weigh",of:`${e.place}.pour.layers.${n}.g`})}function MF(e,t,n,o){return I({key:`pour.layer.${n}.${o}`,label:t.name,note:t.teaspoons?`about ${S(t.teaspoons,1)} tsp`:"",shown:si(a.units,t),size:"weigh",of:`${e.place}.pour.layers.${n}.colours.${o}.g`})}function FF(e,t,n,o){if(n==="parts")return LF(e,t,o);let i="rest"in e;return s`${i?d:h({label:`${o}, ${n}`,at:`${Oo}/${t}/${n}`,unit:n==="depth"?"mm":"g"})}
    <button
      type="button"
      aria-pressed=${i?"true":"false"}
      aria-label="${o} takes the rest"
      @click=${()=>i?CF(t,n):BF(t,n)}
    >
      Takes the rest
    </button>`}function LF(e,t,n){let o=`${Oo}/${t}/parts`,i=r=>()=>{f({typed:void 0}),Z("run",o,Math.max(1,(Number(e.parts)||0)+r))};return s`<div class="stepper parts-of">
    <button type="button" @click=${i(-1)} aria-label="One part less of ${n}">−</button>
    ${h({label:"Parts",at:o,number:!0})}
    <button type="button" @click=${i(1)} aria-label="One part more of ${n}">+</button>
  </div>`}function BF(e,t){let n=Bd().map((o,i)=>i===e?{...Ld(i),rest:!0}:o.rest?{...Ld(i),[t]:""}:o);q("run","takes the rest",Oo,n)}function CF(e,t){let n=`${Oo}/${e}`;q("run","amount of the layer",n,{...Ld(e),[t]:""},oe("run",`${n}/${t}`))}function WF(e,t){let n={at:`${e}/colours`,in_order:!0};return s`${k(n).map((o,i)=>{let r=`${n.at}/${i}`,l=String(o.name)||`colour ${i+1}`;return s`<div class="part" id=${E(n,i)} role="group" aria-label="${l} in ${t}">
      <div class="part-head">
        <p class="part-title">Colour: ${l}</p>
        ${J(n,i,l)}
      </div>
      ${W("run",r)}
      <div class="row">
        ${h({label:"Colour",at:`${r}/name`})}
        ${h({label:"Rate",at:`${r}/rate`,hint:"Such as 4 g/kg of batter, 1 tsp/lb of fats."})}
        ${h({label:"Bulk density (for spoons)",at:`${r}/bulk_density`,unit:"g/ml",optional:!0,short:!0,hint:"A level cup weighed, by the cup's volume."})}
      </div>
      ${vo("run",r,l)}
    </div>`})}
  ${ee(n,"Add a colour",()=>U(n,{name:"",rate:""},"colour"))}`}var Xv=[["+x","+x, right in the drawing"],["-x","\u2212x, left in the drawing"],["+y","+y, back"],["-y","\u2212y, front"]];function IF(e,t){let n=`${e}/tilted`,o=g("run",`${n}/low_side`);return t===k(Po).length-1&&g("run",n)===void 0?s`<p class="hint">The last layer is poured level.</p>`:ot({at:n,name:"the tilt",title:"The mould is tilted",add:"Tilt the mould for this layer",blank:{angle:"",low_side:""},body:()=>s`${h({label:"Tilt",at:`${n}/angle`,unit:"\xB0",short:!0})}
        ${A({question:"Low side",at:`${n}/low_side`,is_told_elsewhere:!0,chosen:o||void 0,answers:Xv,puts:r=>r})}
        ${M({name:`${n} direction`,pointers:[],summary:"Another direction",is_needed:o!==""&&!Xv.some(([r])=>r===o),body:()=>h({label:"Direction of the low side",at:`${n}/low_side`,unit:"\xB0",short:!0,hint:"In degrees from +x towards +y, seen from above."})})}
        <p class="hint">A thickness is then how far up the low wall the layer stands.</p>`})}var an=()=>$(a.run.now,"/pour/line/depth")!==void 0?"depth":"below_brim";function ef(e,t){let n=e.pour.depth_mm+e.pour.below_brim_mm,o=Math.min(Math.max(0,Math.round(t*2)/2),Math.floor(n*2)/2-.5),i=an()==="depth"?n-o:o;f({typed:void 0}),Z("run",`/pour/line/${an()}`,`${S(i,2)} mm`)}function nk(e){let t=e.pour.depth_mm+e.pour.below_brim_mm,n=Yt($(a.run.now,`/pour/line/${an()}`));return n===void 0?e.pour.below_brim_mm:an()==="depth"?t-n:n}function EF(e,t){let n=e.currentTarget,o=n.parentElement.querySelector("svg").getBoundingClientRect();n.setPointerCapture(e.pointerId);let i=l=>t((l.clientY-e.clientY)/o.height),r=()=>{n.removeEventListener("pointermove",i);for(let l of["pointerup","pointercancel"])n.removeEventListener(l,r)};n.addEventListener("pointermove",i);for(let l of["pointerup","pointercancel"])n.addEventListener(l,r)}function NF(e){if(!a.measured)return d;let t=e.pour.depth_mm+e.pour.below_brim_mm,n=nk(e),{share:o,h:i}=Lv(e,t-n),r=c=>EF(c,p=>ef(e,n+p*i)),l=c=>{let p={ArrowUp:-1,ArrowDown:1,PageUp:-5,PageDown:5}[c.key];p!==void 0&&(c.preventDefault(),ef(e,n+p))},u=c=>c&&(c.style.top=`${100*o}%`);return queueMicrotask(()=>u(document.querySelector(".line-handle")??void 0)),s`<div
    class="line-handle"
    role="slider"
    tabindex="0"
    aria-label="Pour line below the brim"
    aria-valuemin="0"
    aria-valuemax=${Math.floor(t)}
    aria-valuenow=${S(n,1)}
    aria-orientation="vertical"
    aria-valuetext="${x($e(a.units,n))} below the brim"
    @pointerdown=${r}
    @keydown=${l}
  >
    <span aria-hidden="true">↕</span>
  </div>`}function jF(e){let{pour:t}=e,n=x($e(a.units,t.below_brim_mm)),o=t.below_brim_mm<.05?"Pour to the brim":`Pour to ${n} below the brim`,i=e.cut?"the loaf":"each",r=we(e);return Re(s`${o}, <b>${x(H(a.units,t.mass_each_g))}</b> ${i}; make
      <b>${x(H(a.units,t.make_g))}</b>${r?` for ${r}`:""}.`)}var ok=()=>an()==="depth"?"Depth":"Below brim";function ik(e){return ut({name:"pour",title:"Pour",drawing:e&&(()=>Do("pour",e)),result:e?jF(e):Re(`${HF()}.`),about:[["run","/pour"]],form:()=>s`${e?qF(e):UF()}
        <div class="more">
          ${Cd("pour")} ${zs("pour")} ${ek(e)} ${Pl("pour")}
        </div>`})}function HF(){let e=O("run",`/pour/line/${an()}`);return e?`${e} ${an()==="depth"?"deep":"below the brim"}`:"No pour line yet"}function qF(e){let{pour:t}=e,n=`${e.place}.pour`,o=i=>()=>ef(e,nk(e)+i);return s`<div class="side">
      ${Ao("pour",e,NF(e))} ${rk(e)}
      <div class="stepper">
        <button type="button" @click=${o(-1)} aria-label="Pour line 1 mm higher">1 mm higher</button>
        ${h({label:ok(),at:`/pour/line/${an()}`,unit:"mm"})}
        <button type="button" @click=${o(1)} aria-label="Pour line 1 mm lower">1 mm lower</button>
      </div>
    </div>
    <div class="weights">
      ${I({key:"pour.each",label:"Weigh into each",shown:H(a.units,t.mass_each_g),note:`${S(t.volume_each_ml,1)} ml`,of:`${n}.mass_each_g`})}
      ${I({key:"pour.mm",label:"1 mm more or less",shown:ke(a.units,t.ml_per_mm,2),note:`${Ve(t.ml_per_mm*t.density_g_per_ml,1)} g at the line`,of:`${n}.ml_per_mm`})}
      ${I({key:"set-up.pour.make",label:"Base to make",note:we(e),shown:H(a.units,t.make_g),of:`${n}.make_g`})}
      ${I({key:"pour.density",label:"Density",shown:[`${t.density_g_per_ml} g/ml`,""],of:`${n}.density_g_per_ml`})}
    </div>`}var UF=()=>s`<div class="side">
    ${rk()} ${W("run","/pour/line")}
    ${h({label:ok(),at:`/pour/line/${an()}`,unit:"mm"})}
  </div>`,Cd=e=>s`<button type="button" @click=${()=>at(e)}>
    Change the formula of the ${e==="pour"?"base":"topping"}
  </button>`;function rk(e){let t=n=>{if(n===an())return;let o=e&&!a.is_old?e.pour[n==="depth"?"depth_mm":"below_brim_mm"]:void 0;q("run","pour line","/pour/line",{[n]:o===void 0?"":`${S(o,3)} mm`})};return ce("The pour line is measured",an(),[["below_brim","From the brim"],["depth","From the floor"]],t)}var zF=[0,50,80,100];function sk(e){let t=e?.pipe;return ut({name:"pipe",title:"Pipe",drawing:t&&(()=>Do("pipe",e)),result:t?KF(e,t):Re("A topping, not yet with figures."),about:[["run","/pipe"]],form:()=>t?JF(e,t):VF()})}function KF(e,t){let n=we(e);return Re(s`Pipe <b>${S(t.volume_each_ml,0)} ml</b> on each, ${x(H(a.units,t.mass_each_g))} at this
      whipped density; make <b>${x(H(a.units,t.make_g))}</b>${n?` for ${n}`:""}.`)}function JF(e,t){return s`<div class="side">
      ${Ao("pipe",e)}
      ${I({key:"pipe.each",label:"Topping on each",shown:ke(a.units,t.volume_each_ml),note:`${S(t.in_headspace_each_ml,1)} ml of it below the brim`,of:`${e.place}.pipe.volume_each_ml`})}
      ${I({key:"set-up.pipe.make",label:"Topping to make",note:we(e),shown:H(a.units,t.make_g),of:`${e.place}.pipe.make_g`})}
      ${I({key:"pipe.density",label:"Whipped density",note:`overrun ${S(t.overrun_percent,0)} %`,shown:[`${t.density_g_per_ml} g/ml`,""],of:`${e.place}.pipe.density_g_per_ml`,term:"overrun"})}
      ${Cd("pipe")} ${zs("pipe")}
    </div>
    <div class="weights">${vp(t)} ${uk()} ${QF(e)} ${tL(e)}</div>
    <div class="more">${yp(t)} ${wp()}</div>`}var Ks=e=>e===0?"pipe":`pipe.whipping${e}`,Js=(e,t)=>`${e.place}.pipe.whippings.${t}`;function ak(e,t){let n=_l(e,t);return n?s`<h4 class="whipping">${n.replace(/^./,o=>o.toUpperCase())}</h4>`:d}function VF(){return s`<div class="more">${yp()}</div>
    <div class="side">${uk()} ${g("run","/pipe/whip_now")===void 0?d:dk()}</div>
    <div class="weights">${vp()} ${Cd("pipe")} ${zs("pipe")}</div>
    <div class="more">${wp()}</div>`}var lk=e=>we(e)?s`<small>${we(e)}</small>`:d;function QF(e){return s`<h3>Today's bowl ${lk(e)}</h3>
    ${dk()} ${e.whippings.map((t,n)=>GF(e,t,n))}`}function GF(e,t,n){let o=t.pieces_now,i=o==null?0:t.pieces-o,r=i>0?`Short by ${i} at this whipped density.`:`Enough for the ${t.pieces} to make.`;return s`${ak(e,t)}
  ${o==null?d:I({key:`${Ks(n)}.now`,label:"Enough for",note:r,shown:[z(o,"piece"),""],size:"weigh",of:`${Js(e,n)}.pieces_now`})}
  ${ZF(e,t,n)}`}function dk(){let e=g("run","/pipe/whip/holds"),t=e===void 0?gs():{holds:e,net:""};return ot({at:"/pipe/whip_now",name:"today's weigh-cup",title:"Today's weigh-cup",add:"Weigh a cup of today's whip",blank:t,body:YF})}function YF(){return s`<div class="row">
    ${h({label:"Weigh-cup today, net",at:"/pipe/whip_now/net",unit:"g"})} ${_s("/pipe/whip_now")}
  </div>`}function ZF(e,t,n){return t.readings?.length?M({name:`${Ks(n)} readings`,pointers:[],summary:"Other readings of the weigh-cup",body:()=>XF(e,t,n)}):d}function XF(e,t,n){return s`<table class="readings">
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
              <th scope="row">${S(o.net_g,1)} g${o.planned?" (planned)":""}</th>
              <td>${S(o.overrun_percent,0)} %</td>
              <td>${o.pieces}</td>
            </tr>`)}
      </tbody>
    </table>
    ${ei(`${Ks(n)}.readings`,"Show the calculation",`${Js(e,n)}.readings`)}`}function uk(){let e="/pipe/fills_headspace",t=Number(/^\s*(\d+(?:[.,]\d+)?)\s*%/.exec(O("run",e))?.[1]?.replace(",",".")),n=Qe("run",e);return s`<h3>
      <span id="recess">How much of the headspace below the brim does the topping fill?</span>
      ${wo("headspace")}
    </h3>
    <div class="choice pictures" role="group" aria-labelledby="recess">
      ${zF.map(o=>s`<button
            type="button"
            aria-pressed=${o===t?"true":"false"}
            @click=${()=>Z("run",e,`${o} %`)}
          >
            ${eL(o)}<span
              >${{0:"Not at all, 0 %",50:"Half, 50 %",80:"Mostly, 80 %",100:"Level, 100 %"}[o]}</span
            >
          </button>`)}
    </div>
    ${h({label:"Headspace filled, as a share",at:e,unit:"%",hint:n?void 0:"Trials piped on flat paper do not include it."})}`}function eL(e){let t=52*(e/100);return s`<svg viewBox="0 0 72 46" aria-hidden="true">
    ${R`
    <path class="plain" d="M10 26H62L57 44H15Z" /><rect class="shaded pipe" x=${36-t/2} y="18" width=${t} height="8" />
    <path class="shaded pipe" d="M12 18C6 12 14 8 20 9C20 2 30 2 36 1C42 2 52 2 52 9C58 8 66 12 60 18Z" />
    <path class="wall" d="M8 18L15 44H57L64 18" />`}
  </svg>`}function tL(e){let t=e.whippings.map(i=>({one:i,words:nL(i)})).filter(({words:i})=>i),n=e.whippings[0],o=n?.limits??[];return!n||!o.length&&!t.length?d:s`<h3>Limits of whisk, bowl and time ${lk(e)}</h3>
    ${t.map(({one:i,words:r})=>s`${ak(e,i)}
          <p>${r}.</p>`)}
    <ul class="limits">
      ${o.map(i=>s`<li class=${i.sets?"binds":""}>
            ${i.sets?s`<strong>Sets the batch: </strong>`:d}${i.text}
          </li>`)}
    </ul>
    ${ei("pipe.limits","How the limits come about",`${Js(e,0)}.limits`)}`}function nL({piping_s:e,lye_spoonfuls:t}){return[e?`${bo(e)} of piping`:"",t?`${t.count} spoonfuls of lye, ${bo(t.altogether_s)}`:""].filter(Boolean).join("; ")}function pk(e){return ut({name:"lye",title:"Lye",drawing:iL,result:e?ck(e).map(oL):Re("Not yet with figures."),about:[["run","/lye_pot"],["run","/bottles"]],form:()=>s`${e?s`<div class="more jugs">${ck(e).map(rL)} ${aL(e)}</div>`:d}
        <div class="more">${Rv()} ${Sv(e)}</div>`})}function ck(e){let{pieces:t}=e.batch,n={slot:"pour",title:e.pipe?"Lye for the base":"Lye",batter:e.pour,place:`${e.place}.pour`,pieces:t,key:"pour"},o=e.whippings.map((i,r)=>{let l=_l(e,i);return{slot:"pipe",title:`Lye for the topping${l&&`, ${l}`}`,batter:i,place:Js(e,r),pieces:t,key:Ks(r)}});return[n,...o]}function oL({title:e,batter:t,slot:n,pieces:o}){let i=_o(n,o).length?" \u26A0":"";return Re(s`${e}: ${S(t.lye_strength_percent,1)} % strong; superfat as weighed
      <b>${lt(t.superfat_percent.effective)}${i}</b>.`)}var iL=()=>s`<div class="small-view">
    <svg class="jug-sign" viewBox="0 0 60 50" aria-hidden="true">
      ${R`<path class="plain" d="M15 22L19 44H41L45 22Z" /><path class="wall" d="M10 6L19 44H41L49 6M10 6H7M46 14C58 14 56 32 43 34" />`}
    </svg>
  </div>`;function rL({slot:e,title:t,batter:n,place:o,pieces:i,key:r}){let{effective:l}=n.superfat_percent,u=_o(e,i).length>0,c=`danger-set-up-${r.replaceAll(".","-")}`,p=r===e;return s`<div class="jug">
    <h3>${t} <small>${n.formula}</small></h3>
    ${I({key:`set-up.${r}.strength`,label:"Lye strength",note:`water ${S(n.water_to_pure_alkali,2)} : 1 to alkali; water ${S(n.water_percent_of_fats,1)} % of the fats`,shown:[`${S(n.lye_strength_percent,1)} %`,""],of:`${o}.lye_strength_percent`})}
    ${I({key:`set-up.${r}.superfat`,label:"Superfat as weighed",shown:[`${lt(l)}${u?" \u26A0":""}`,""],of:`${o}.superfat_percent.effective`,term:r==="pour"?"superfat_as_weighed":void 0})}
    ${es(e,c,i)} ${mk(n.superfat_percent)} ${sL(n,o,r)}
    ${!p||g(e,"/superfat")===void 0?d:h({label:"Planned superfat",of:e,at:"/superfat",unit:"%",described_by:u?c:void 0,hint:a.formulas[e]?.shipped?"Typing here makes a copy of the formula beside your run.":void 0})}
  </div>`}function mk(e){let{low:t,high:n,likely_low:o,likely_high:i,uncertainties:r}=e,l=`It lies between ${lt(t)} and ${lt(n)}, as lots, purity and scales may fall`,u=o===void 0||i===void 0?".":`; nineteen batches in twenty between ${lt(o)} and ${lt(i)}.`,c=r[0],p=c?s` Most of the doubt is ${c.cause}: ${c.remedy}.`:d;return Fc(t)?s`<p class="mind of-plan">
    <strong>Caution</strong> It may come out lye-heavy. ${l}${u}
    ${c?p:"Use a finer scale, a larger batch or a higher superfat."}
  </p>`:s`<p class="aside of-plan">${l}${u} Some fat is left over even at the lowest.${p}</p>`}function sL(e,t,n){return e.heat?s`${fk(e.heat)} ${ei(`${n}.heat`,"How the heat is worked out",`${t}.heat`)}`:d}function fk(e){let t=i=>x(y$(a.units,i)),n=e.cooling.map(i=>`${i.shortest_min*60?bo(i.shortest_min*60):"at once"} to ${bo(i.longest_min*60)} in ${i.in}`),o=e.peak_c===null?"The KOH solution warms as it is diluted; how far is not known.":`Water at ${t(e.water_at_c)}: the lye may reach ${t(e.peak_c)}; it boils at ${t(e.boils_at_c)}.`;return s`<p class="aside of-plan">
    ${o}${n.length?` To cool: ${n.join("; ")}.`:""}${e.at_pour_c===null?"":` Lye and fats meet at about ${t(e.at_pour_c)}.`}
  </p>`}function aL(e){let t=e.lye_pot;if(!t)return d;let{units:n}=a,o=(i,r,l,u,c="")=>I({key:`pot.${i}`,label:r,note:c,shown:l,size:"weigh",of:`${e.place}.lye_pot.${u}`});return s`<div class="jug">
    <h3>
      One pot for both
      <small>strength ${S(t.strength_percent,1)} %${we(e)&&`; ${we(e)}`}</small>
    </h3>
    ${o("water","In the pot: water, distilled",X(n,ae(t,"water_")),"water_g")}
    ${t.alkalis.map((i,r)=>o(`alkali.${r}`,`In the pot: ${i.name}`,X(n,ae(i,""),"down"),`alkalis.${r}.g`))}
    ${o("lye","Lye solution in the pot",X(n,ae(t,"lye_")),"lye_g",lL(t))}
    ${t.shares.map((i,r)=>s`${o(`share.${r}`,`Out of it for ${i.batter}`,X(n,ae(i,"lye_"),"down"),`shares.${r}.lye_g`,`superfat then ${lt(i.superfat_percent)}`)}
        ${i.top_up_g>0?o(`top_up.${r}`,`and plain water to ${i.batter}`,X(n,ae(i,"top_up_")),`shares.${r}.top_up_g`):d}
        ${es(r===0?"pour":"pipe","",e.batch.pieces)}
        ${i.superfat?mk(i.superfat):d}`)}
    ${t.left_g?s`<p class="aside of-plan">
            ${x(X(a.units,{g:t.left_g,g_text:t.left_g_text,oz_text:t.left_oz_text}))} of lye
            is left in the pot, for the shares are rounded down.
          </p>`:d}
    ${t.heat?fk(t.heat):d}
  </div>`}function lL(e){if(e.full_pot_g===null)return"";let{g_text:t,oz_text:n,...o}=ae(e,"lye_"),i=X(a.units,{...o,g:e.full_pot_g,g_text:e.full_pot_g_text,oz_text:e.full_pot_oz_text});return`${x(i)} with the pot: make up with water to that after cooling`}var Vs=new Map,dL=()=>Vs.clear(),uL=e=>typeof e?.owned=="number"?e.owned:void 0;function tf(e){let t=st(e,a.files?.moulds);return Vs.has(t)||(Vs.set(t,void 0),cL(t)),Vs.get(t)}async function cL(e){try{Vs.set(e,uL(ye((await Ke(e)).text))),Q()}catch(t){if(!(t instanceof w))throw t}}async function hk(e,t){let n=tf(e);n!==void 0&&(Z("studio",t,n),D(`${n} kept in the studio`),await pL(st(e,a.files?.moulds)),se())}async function pL(e){let t=await Ie(it,e);t.shipped||t.theirs||(Ee(t,F(t.now,"/owned",void 0)),await cn(t),dL())}var Wd=["monday","tuesday","wednesday","thursday","friday","saturday","sunday"],Id=e=>e[0].toUpperCase()+e.slice(1),Ed=e=>h({...e,of:"studio"});function gk(){return!Un()&&a.run.file&&a.open.has("folded studio days")&&nr("run"),s`<section class="questions of-studio" aria-label="Making days">
    <h3>Making days</h3>
    ${M({of:"studio",name:"days",pointers:["/days",...sn()?[]:["/work"]],summary:s`<span>When you work${s`<small>${mL()}</small>`}</span>`,body:fL})}
  </section>`}function mL(){let e=g("studio","/days/making")??{};return Wd.filter(t=>e[t]).map(t=>`${Id(t)} ${String(e[t])}`).join(", ")}var fL=()=>s`<p class="hint">
      Hours on each day that you make, cast and pack; blank on days without. A run's days are planned into them.
    </p>
    <div class="row">
      ${Wd.map(e=>Ed({label:Id(e),at:`/days/making/${e}`,unit:"h",optional:!0,takes_part:!0,short:!0}))}
    </div>
    ${W("studio","/days")} ${W("studio","/days/making")} ${hL()} ${gL()} ${$L()}
    ${sn()?s`<p class="hint">How long a batch, a piece and packing take you stands under Work.</p>`:s`<p class="question">How long the work takes you</p>
            <div class="row">${ad(g("studio","/days")!==void 0)}</div>
            ${W("studio","/work")}`}`;function hL(){let e="/days/small_jobs",t=Y("studio",e),n=te("studio",e),o=l=>{let u=Wd.filter(p=>p===l!==n.includes(p)),c=p=>zn(F(p,e,u.length?[...u]:void 0),"/days");wt("studio",`${Id(l)}: ${n.includes(l)?"no":"yes"}`,c)},i=Qe("studio",e),r=Wd.filter(l=>n.includes(l)||!O("studio",`/days/making/${l}`));return s`<div class="field asked ${i?"wants":""}">
    <p class="question" id="${t}-label">Other days on which you are there to unmould, cut and set to chill</p>
    <div class="choice" role="group" id=${t} tabindex="-1" aria-labelledby="${t}-label">
      ${r.map(l=>s`<button type="button" aria-pressed=${n.includes(l)?"true":"false"} @click=${()=>o(l)}>
            ${Id(l)}
          </button>`)}
    </div>
    ${be(t,i,"Without any, these wait for a making day.")}
  </div>`}var Qs={of:"studio",at:"/days/off",and:e=>zn(e,"/days")};function gL(){return s`<p class="question">Days off and holidays</p>
    ${k(Qs).map((e,t)=>_L(String(e),t))}
    ${ee(Qs,"Add a day off",()=>U(Qs,"","A day off"))}`}function _L(e,t){let n=`/days/off/${t}`,[o,i=""]=e.split("/"),r=Y("studio",n),l=Me("studio",n),u=(m,_)=>Z("studio",n,_&&_!==m?`${m}/${_}`:m),c=(m,_,b,y)=>s`<div class="field short ${l?"wants":""}">
      <label for=${m}>${_}</label>
      <input
        id=${m}
        type="date"
        .value=${P(b)}
        @input=${T=>y(T.target.value)}
        @blur=${ni}
        aria-invalid=${l?"true":"false"}
        aria-describedby=${l?`${r}-said`:d}
      />
      ${m===r?be(r,l):d}
    </div>`,p=o?`off on ${N(o)}`:`day off ${t+1}`;return s`<div class="row" id=${E(Qs,t)} role="group" aria-label=${p}>
    ${c(r,"First day off",o,m=>u(m,i))}
    ${c(`${r}-last`,"Last, if there are several",i,m=>u(o,m))} ${J(Qs,t,p)}
  </div>`}function $L(){let e=(t,n,o)=>Ed({label:n,at:`/days/${t}`,count:!0,optional:!0,short:!0,hint:o});return s`<p class="question">What limits the work of a day; left blank, it sets no limit</p>
    <div class="row">
      ${e("pots_owned","Pots for the base")} ${e("bowls_owned","Bowls for the topping")}
      ${e("used_a_day","Uses of each on a day","Once, if blank; washed up in between.")}
      ${e("rack_places","Pieces that can cure at once")}
      ${Ed({label:"Decorations cast beforehand by at most",at:"/days/cast_beforehand",unit:"days",optional:!0,short:!0})}
    </div>
    ${bL()}
    ${$(g("studio","/days"),"/making")===void 0&&g("studio","/days")!==void 0?s`<p class="hint">Without the hours of a making day these are of no use.</p>`:d}`}var bL=()=>ot({of:"studio",at:"/days/one_lye_a_day",name:"the shared lye",title:"One pot of lye solution for several batches of a day",add:"Make one pot of lye solution for a day's batches",blank:{holds:"",saves:""},body:()=>{let e=(t,n,o,i={})=>Ed({label:n,at:`/days/one_lye_a_day/${t}`,unit:o,short:!0,...i});return s`<p class="hint">Made the evening before and shared by weight, where the batches' lyes are alike.</p>
        <div class="row">
          ${e("holds","Pot holds","l",{hint:"To the brim; filled to half."})}
          ${e("saves","Each further batch takes less by","min")}
          ${e("pot_tare","Empty pot","g",{optional:!0,hint:"Where the full one is weighed with it."})}
        </div>`}});var wL={pour:[{name:"overpour",label:"Overpour, of what is in the pieces",unit:"%"},{name:"pot",label:"Left in the pot",unit:"g"},{name:"jugs",label:"Left in the jugs",unit:"g"},{name:"test_piece",label:"Test piece",unit:"g"}],pipe:[{name:"bag",label:"Left in the bag",unit:"g"},{name:"bowl_and_whisk",label:"Left in bowl and whisk",unit:"g"},{name:"tip",label:"Left in the tip",unit:"g",optional:!0},{name:"each_bag_change",label:"Lost at each bag change",unit:"g",optional:!0}]},_k=e=>({run:e,studio:e}),nf=e=>_k(`/losses/${e}`);function of(e,t){return wL[e].map(({name:n,label:o,unit:i,optional:r})=>qe(_k(`/losses/${e}/${n}`),{label:t?`${t}: ${o.toLowerCase()}`:o,unit:i,short:!0,optional:r}))}var rf={holds:"",paid:""},Nd=e=>({of:"studio",at:`/packs/${j(e)}`,in_order:!0,and:(t,n)=>n?t:Ki(zn(t,"/packs"),[`/serves_as/${j(e)}`])});function bk(e){let t=a.fats.find(n=>n.id===e||n.name===e);return t?[t.id,t.name,t.inci,...t.also_called]:[e]}function wk(e,t){let n=new Set(bk(t).map(o=>o.toLowerCase()));return he("studio",e).find(o=>n.has(o.toLowerCase()))}var hi=e=>wk("/packs",e),yk=e=>Nt().includes(e)||a.fats.some(t=>t.id===e)?"g":void 0,vk="money packs";function kk(e){return s`${he("studio","/packs").map(t=>yL(t,e))}
  ${fi({key:"pack",label:"Which material comes in packs?",offers:Nt(),taken:t=>hi(t)!==void 0,take:jd})}`}function yL(e,t){let n=Nd(e),o=ne(e);return s`<div class="part" role="group" aria-label="Packs of ${o}">
    <p class="part-title">${o}</p>
    ${k(n).map((i,r)=>kL(n,r,o,yk(e),t))}
    <div class="row">
      ${ee(n,s`Another pack of ${o}`,()=>U(n,rf,`A pack of ${o}`))}
      ${h({of:"studio",label:"Lost beside the batch",at:`/waste/${j(e)}`,unit:"%",optional:!0,takes_part:!0,short:!0})}
      ${vL(e)}
    </div>
  </div>`}var $k=e=>`/serves_as/${j(e)}`;function vL(e){let t=$k(e),n=O("studio",t),o=new Set(bk(e)),i=[...new Set([...Nt(),...he("studio","/packs")])].filter(l=>!o.has(l)&&g("studio",$k(l))===void 0),r=l=>u=>zn(F(u,t,l||void 0),"/serves_as");return!n&&(Nt().some(l=>o.has(l))||!i.length)?d:fe({label:"Another make of",of:"studio",at:t,answers:i.map(l=>[l,ne(l)]),unsaid:"nothing: a material of its own",optional:!0,take:l=>wt("studio",`${ne(e)}: ${l?ne(l):"a material of its own"}`,r(l))})}function kL(e,t,n,o,i){let r=`${e.at}/${t}`,l=(c,p,m={})=>h({of:"studio",label:p,at:`${r}/${c}`,short:!0,...m}),u=g("studio",`${r}/density`)!==void 0||Qe("studio",`${r}/holds`);return s`<div class="row" id=${E(e,t)} role="group" aria-label="Pack ${t+1} of ${n}">
    ${l("holds","One pack holds",{unit:o,hint:o?void 0:"Such as 50 pieces, or 1 kg"})}
    ${l("paid","Paid for it",{told:i})} ${xL(r)}
    ${l("as_of","Day of the price",{optional:!0,date:!0})}
    ${u?l("density","Density of what it holds",{unit:"g/ml",optional:!0}):d}
    ${J(e,t,`pack ${t+1} of ${n}`)}
  </div>`}function xL(e){let t=`${e}/from`,n=he("studio","/sellers");return n.length?fe({label:"From",of:"studio",at:t,answers:n.map(o=>[o,o]),unsaid:"not given",optional:!0}):h({of:"studio",label:"From",at:t,optional:!0,short:!0})}function jd(e){let t=`/packs/${j(e)}`,[n,o]=[`/prices/${j(e)}`,`/money/prices/${j(e)}`],i=or().length?g("run",o):void 0,r=[i,g("studio",n)].flatMap(RL),l=r.length?[...r,rf]:[rf];Kt([["studio",c=>TL(F(Ki(c,[n]),t,l))],...i!==void 0?[["run",c=>Ki(c,[o])]]:[]]),D(r.length?`The price of ${ne(e)} is its first pack now`:`${ne(e)} added`),Ge("studio",vk),C(Xt(E(Nd(e),l.length-1)))}var TL=e=>$(e,"/currency")?e:F(e,"/currency",cd());function RL(e){let t=$(e,"/paid");if(!t)return[];let n=$(e,"/confirmed");return[{holds:$(e,"/for")??"",paid:t,...n===void 0?{}:{confirmed:n}}]}var xk=e=>s`<button
    type="button"
    aria-label="Another pack size of ${ne(e)}"
    @click=${()=>jd(e)}
  >
    Another pack size
  </button>`;function Tk(e){let t=hi(e),n=te("studio",Nd(t).at).length,o=()=>{Ge("studio",vk),C(Xt(E(Nd(t),0)))};return s`<div class="row">
    <p>${ne(e)}: by ${n===1?"its pack":`its ${n} packs`}</p>
    <button type="button" aria-label="To its packs: ${ne(e)}" @click=${o}>To its packs</button>
  </div>`}function Rk(){let e=t=>`/have/${j(t)}`;return s`${he("studio","/have").map(t=>{let n=yk(t),o=n?void 0:"Such as 12 pieces, or 1 kg";return s`<div class="row">
      ${h({of:"studio",label:ne(t),at:e(t),unit:n,hint:o,short:!0})}
      ${oi("studio","/have",t,ne(t))}
    </div>`})}
  ${fi({key:"have",label:"Which material stands on the shelf?",offers:Nt(),taken:t=>wk("/have",t)!==void 0,take:t=>q("studio",`${ne(t)} added`,e(t),"",oe("studio",e(t)))})}`}var Sk=({key:e})=>`money ${e}`;function Pk(){if(!sn())return d;let e=AL(cd());return!Un()&&e.some(t=>a.open.has(`folded studio ${Sk(t)}`))&&Ql(),s`<section class="questions money of-studio" aria-label="Buying and selling">
    <h3>Buying and selling</h3>
    ${SL()}
    <div class="folds">
      ${e.map(t=>M({of:"studio",name:Sk(t),pointers:t.pointers,summary:s`<span>${t.title}${t.told?s`<small>${t.told}</small>`:d}</span>`,body:t.body}))}
    </div>
  </section>`}var SL=()=>g("run","/money/currency")===void 0?d:s`<div class="row">
        ${gi({label:"Currency of the studio",at:"/currency",optional:!0,short:!0})}
      </div>`,gi=e=>h({...e,of:"studio"}),Hd=e=>he("studio",e).map(ne).join(", ");function AL(e){let t=(i,r,l={})=>gi({label:r,at:i,told:e,short:!0,...l}),n=(i,r)=>t(i,r,{optional:!0,takes_part:!0}),o=(i,r="")=>{let l=O("studio",i);return l&&`${l}${r}`};return[{key:"packs",title:"Packs",pointers:["/packs","/waste","/serves_as"],told:Hd("/packs"),body:()=>kk(e)},{key:"sellers",title:"Sellers",pointers:["/sellers"],told:Hd("/sellers"),body:()=>PL(t)},{key:"have",title:"On the shelf",pointers:["/have"],told:Hd("/have"),body:Rk},{key:"packaging",title:"Packaging",pointers:["/packaging"],told:k(mr).map(i=>ne(String($(i,"/material")))).join(", "),body:ML},{key:"work",title:"Work",pointers:["/work"],told:o(di("paid_an_hour"),` ${e} an hour`),body:()=>LL(t)},{key:"overhead",title:"Overhead",pointers:["/overhead"],told:o("/overhead/each_batch",` ${e} each batch`),body:()=>s`<p class="hint">Rent, power, cleaning and the like.</p>
          <div class="row">
            ${n("/overhead/each_batch","Each batch")} ${n("/overhead/each_piece_made","Each piece made")}
          </div>`},{key:"tax",title:"Tax on sales",pointers:["/tax"],told:o("/tax/rate"),body:BL},{key:"fees",title:"Fees of selling",pointers:["/fees"],told:o("/fees/of_price"," of the price"),body:()=>s`<div class="row">
          ${gi({label:"Of what the buyer pays",at:"/fees/of_price",unit:"%",optional:!0,takes_part:!0,short:!0})}
          ${n("/fees/each_order","Each order")}
        </div>`},{key:"asking",title:"Ways of selling",pointers:["/asking","/price_endings"],told:Hd("/asking"),body:()=>CL(t)}]}var DL=e=>(t,n)=>Object.entries(t.packs??{}).reduce((o,[i,r])=>r.reduce((l,{from:u},c)=>u===e?F(l,`/packs/${j(i)}/${c}/from`,n):l,o),t);function PL(e){let t=(n,o)=>`/sellers/${j(n)}/${o}`;return s`${he("studio","/sellers").map(n=>s`<div class="part" role="group" aria-label=${n}>
        <div class="part-head">
          <p class="part-title">${n}</p>
          ${oi("studio","/sellers",n)}
        </div>
        <div class="row">
          ${ls({of:"studio",at:"/sellers",name:n,label:"Seller's name",also:DL(n)})}
          ${e(t(n,"postage"),"Postage of an order",{optional:!0,hint:"0 if you fetch it"})}
          ${e(t(n,"postage_free_from"),"Free from",{optional:!0})}
          ${gi({label:"From ordering to having it",at:t(n,"lead_time"),unit:"days",optional:!0,short:!0})}
        </div>
      </div>`)}
  ${Ji({of:"studio",at:"/sellers",label:"Another seller, by name",add:"Add the seller",blank:{},then:n=>oe("studio",t(n,"postage"))})}`}var mr={of:"studio",at:"/packaging"},OL=e=>!Nt().includes(e)&&!a.fats.some(t=>t.id===e);function ML(){let e=t=>k(mr).some(n=>$(n,"/material")===t);return s`<p class="hint">What goes round each piece that is sold. Its price is that of its pack.</p>
    ${k(mr).map((t,n)=>FL(String($(t,"/material")??""),n))}
    ${fi({key:"packaging",label:"What goes round a piece?",offers:["/packs","/prices"].flatMap(t=>he("studio",t)).filter(OL),taken:e,take:t=>U(mr,{material:t,each_piece:""},t)})}`}function FL(e,t){let n=hi(e)!==void 0||g("studio",`/prices/${j(e)}`)!==void 0;return s`<div class="row" id=${E(mr,t)}>
    ${gi({label:`${ne(e)}, each piece`,at:`/packaging/${t}/each_piece`,unit:"pieces",short:!0,hint:"How many, or a mass such as 3 g"})}
    ${n?d:s`<button type="button" aria-label="Say its price: ${e}" @click=${()=>jd(e)}>
            Say its price
          </button>`}
    ${J(mr,t,e)}
  </div>`}function LL(e){let t=g("studio","/work")!==void 0;return s`<div class="row">
      ${e(di("paid_an_hour"),"Paid an hour",{optional:!0,takes_part:!0,is_due:t})} ${ad()}
    </div>
    ${W("studio","/work")}`}var Ak=(e,t)=>A({of:"studio",question:e,at:`/tax/${t}`,chosen:O("studio",`/tax/${t}`)||void 0,answers:[["with tax","With tax"],["without tax","Without tax"]],puts:n=>n}),BL=()=>s`<p class="hint">Where you charge it and get back what you pay of it. If you are exempt, leave it out.</p>
    ${ot({of:"studio",at:"/tax",name:"the tax",title:"Tax on sales",add:"I charge tax",blank:{rate:""},body:()=>s`<div class="row">${gi({label:"Rate",at:"/tax/rate",unit:"%",short:!0})}</div>
          ${Ak("The prices you pay are","prices_paid")} ${Ak("The prices you ask are","prices_asked")}`})}`,Dk=[["margin","A margin"],["markup","A markup"],["price","A price as set"]];function CL(e){let t=n=>`/asking/${j(n)}`;return s`${he("studio","/asking").map(n=>WL(n,t(n),e))}
  ${Ji({of:"studio",at:"/asking",label:"Another way, such as retail",add:"Add the way",blank:{},then:n=>oe("studio",t(n))})}
  ${IL(e)}`}function WL(e,t,n){let o=g("studio",t)??{},i=Dk.map(([l])=>l).find(l=>o[l]!==void 0),r=l=>gi({label:l,at:`${t}/${i}`,unit:"%",short:!0});return s`<div class="part" role="group" aria-label=${e}>
    <div class="part-head">
      <p class="part-title">${e}</p>
      ${oi("studio","/asking",e)}
    </div>
    <div class="row">${ls({of:"studio",at:"/asking",name:e,label:"What you call it"})}</div>
    ${A({of:"studio",question:"Its price comes by",at:t,chosen:i,answers:Dk,puts:l=>({[l]:""}),then:l=>`${t}/${l}`})}
    ${i?s`<div class="row">
            ${i==="price"?n(`${t}/price`,"Price of a piece"):r(i==="margin"?"Margin, of the price":"Markup, on the cost")}
          </div>`:d}
  </div>`}var Gs={of:"studio",at:"/price_endings"},IL=e=>s`<p class="question">A price ends in</p>
    ${k(Gs).map((t,n)=>s`<div class="row" id=${E(Gs,n)}>
          ${e(`/price_endings/${n}`,`Ending ${n+1}`,{hint:"Such as 0.90"})}
          ${J(Gs,n,`ending ${n+1}`)}
        </div>`)}
    ${ee(Gs,"Add an ending",()=>U(Gs,"","An ending"))}`;var EL=e=>le()&&hi(e)===void 0&&or().length>0;function Ok(){if(!sn())return s`<button type="button" @click=${NL}>Add what you paid</button>`;let e=(t,n)=>{let o=`/${j(t)}/${n}`;return{run:ud.run+o,studio:ud.studio+o}};return s`<div class="row">
      ${qe(An,{label:"Currency",short:!0,hint:"Its ISO 4217 code, such as EUR."})}
    </div>
    <div class="prices">
      ${Nt().map(t=>hi(t)===void 0||g("run",e(t,"paid").run)!==void 0?s`<div class="row">
              ${qe(e(t,"paid"),{label:`${ne(t)}, paid`,optional:!0,takes_part:!0,short:!0})}
              ${qe(e(t,"for"),{label:`for how much ${ne(t)}`,unit:"g",optional:!0,takes_part:!0,short:!0})}
              ${EL(t)&&bn(e(t,"paid"))?xk(t):d}
            </div>`:Tk(t))}
    </div>
    ${Nt().length?d:s`<p class="hint">The materials stand here as soon as there are figures.</p>`}`}function NL(){let e=le()?"studio":"run",t=e==="studio"?An.studio:An.run;q(e,"Prices added",t,"",oe(e,t))}var fr=e=>({run:e,studio:e}),sf=e=>({run:`/pipe/${e}`,studio:`/${e}`}),jL=fr("/scales"),Mk=fr("/spoilage"),HL=fr("/pots");function af(e){return ut({name:"studio",title:"My studio",result:Re(qL()),about:[["studio",""],["run","/losses"],["run","/scales"],["run","/spoilage"],["run","/pots"],["run","/money"],["run","/pipe/bowl"],["run","/pipe/bag_holds"],["run","/pipe/lye_spoon"]],form:()=>UL(e)})}function qL(){let e=a.beside.studio?.file;return e?s`What is the same in every run, kept in ${e}.`:s`Scales, losses and whatever else is the same in every run; kept in this run so far.`}function UL(e){let t=zL(e),n=[...t.flatMap(o=>o.all),...dt()?[Ml]:[]];return s`${le()?d:s`<p class="choice">
              <button type="button" class="strong" @click=${()=>{Uc(n)}}>
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
              ${yo(o,i)}
            </div>
            ${r()}
          </section>`)}
    </div>
    ${le()?s`${Pk()} ${Vv()} ${gk()}`:d}`}function zL(e){let t=yt(),n=[{title:"Scales",all:[jL],body:KL},{title:"Losses",all:[nf("pour"),...t?[nf("pipe")]:[]],body:()=>JL(t,e)},{title:"Rejects",all:[Mk],body:QL},{title:"Pot and lye jug",all:[HL],body:GL},{title:"Moulds owned",all:Fk().map(({shared:o})=>o),body:ZL},{title:"Prices paid",all:or(),body:Ok}];return t&&n.splice(4,0,{title:"Bowl, bag, spoon",all:["bowl","bag_holds","lye_spoon"].map(sf),body:YL},{title:"Weigh-cups",all:[],body:Ob}),le()&&g("run","/label")===void 0&&n.push({title:"Where it is sold",all:[ur],body:Qm}),n}function KL(){let e=(t,n)=>s`${qe(fr(`/scales/${t}/step`),{label:`${n}, smallest step`,unit:"g",short:!0,term:t==="large"?"scale_step":void 0})}
    ${qe(fr(`/scales/${t}/most`),{label:`${n}, most it weighs`,unit:"g",short:!0})}`;return s`<div class="row">${e("large","Large scale")} ${e("fine","Fine scale")}</div>
    <p class="hint">With one scale only, give it in both places.</p>`}function JL(e,t){return s`<div class="row">
      ${of("pour",e?"Base":void 0)} ${e?of("pipe","Topping"):d}
    </div>
    ${t?VL(t):d}`}function VL({pour:e,pipe:t,...n}){let o=we({pour:e,pipe:t,...n}),i=(r,{in_pieces_g:l,lost_g:u})=>`${r}: ${x(H(a.units,l))} in the pieces, ${x(H(a.units,u))} lost.`;return s`<p class="aside of-plan">
    ${o?`In ${o}. `:""}${i("Base",e)} ${t?i("Topping",t):""}
  </p>`}var QL=()=>qe(Mk,{label:"Rejects",unit:"%",short:!0,optional:!0,term:"rejects"});function GL(){let e=(t,n,o)=>qe(fr(`/pots/${t}`),{label:n,unit:"l",optional:!0,takes_part:!0,short:!0,hint:o});return s`<div class="row">
    ${e("holds","Pot for the base holds","To the brim; filled to two thirds. Left blank, it sets no limit.")}
    ${e("lye_jug","Lye jug holds","To the brim; filled to half.")}
  </div>`}function YL(){let e=(n,o,i,r=!1)=>qe(sf(n),{label:o,unit:i,short:!0,optional:!0,is_due:r,takes_part:n!=="bag_holds"}),t=n=>bn(sf(n))!==void 0;return s`<div class="row">
    ${e("bowl/holds","Bowl holds","l",t("bowl/whisk_needs"))}
    ${e("bowl/whisk_needs","Smallest unwhipped amount the whisk reaches","ml")}
    ${e("bag_holds","One bag holds","ml")}
    ${e("lye_spoon/holds","Lye spoon holds","ml",t("lye_spoon/time_between"))}
    ${e("lye_spoon/time_between","From one spoonful to the next","s",t("lye_spoon/holds"))}
  </div>`}function Fk(){return["/pour",...k(je).map((t,n)=>lr(n))].flatMap(t=>{let n=O("run",`${t}/mould`);return n?[{mould:n,shared:{run:mv(t),studio:`/moulds_owned/${j(zc(n))}`}}]:[]})}function ZL(){return s`<div class="row">
    ${Fk().map(({mould:e,shared:t})=>{let n=a.files?.moulds.find(r=>r.file===e)?.name??e,o=bn(t)===void 0?tf(e):void 0,i=()=>{hk(e,`/moulds_owned/${j(zc(e))}`)};return s`${qe(t,{label:`${n}, owned`,count:!0,optional:!0,short:!0,hint:o===void 0?"Else as many as the mould's own file says.":`The mould's own file says ${o}.`})}
      ${o!==void 0&&le()?s`<button type="button" aria-label="Move it into my studio: ${o} of ${n}" @click=${i}>
              Move it into my studio
            </button>`:d}`})}
  </div>`}function lf(e){let t=e&&Vi(e);return s`${eB(e)}
    <div class="set-up">${Lk(t)} ${XL()} ${af(t)}</div>`}function Lk(e){return s`${ik(e)} ${yt()?sk(e):d}
  ${Wv()?Nv(e):d} ${Iv()?Hv(e):d}
  ${dt()?Kv(e):d} ${pk(e)} ${Vm()?Jv(e?.whole):d}`}function XL(){return s`<section class="lane unused" aria-label="What may be added">
    <div class="choice">
      ${yt()?d:s`<button type="button" @click=${Mb}>Add a topping</button>${Fb()}`}
      ${kv()} ${Ib()}
      ${Vm()?d:s`<button type="button" @click=${Av}>Draft the label</button>`}
    </div>
  </section>`}function Bk(e=d){return s`<div class="row">
    ${h({label:"Pieces to sell",at:"/sell",count:!0,short:!0})}
    ${zi("Mould","/pour/mould",a.files?.moulds)}
    ${zi("Base","/pour/formula",a.files?.formulas)}
    ${yt()?zi("Topping","/pipe/formula",a.files?.formulas):d} ${e}
  </div>`}function eB(e){return s`<section class="order-of" aria-labelledby="run-title">
    ${typeof a.run.now.note=="string"?s`<p class="aside">${a.run.now.note}</p>`:d}
    ${Bk(e?tB(e):d)}
    <div class="batches">${e?Pv(e):d} ${Um()} ${Km()}</div>
  </section>`}function tB(e){let{sell:t,make:n,fillings:o,cavities:i,casts:r,batches:l}=e.pieces,u=Ye(e)?`${l} batches, ${z(o,"filling")}`:$l(o,i);return I({key:"pieces.make",label:e.cut?"Bars to make":"Pieces to make",note:r!==n?`${r} ${e.cut?"loaves":"casts"}, ${u}`:u,shown:[String(n),t===n?"":`for ${t}`],size:"weigh",of:"pieces.make"})}function nB(){let t=(a.formulas.apart?["apart"]:["pour","pipe"]).filter(n=>a.formulas[n]).filter(oB);return[Lt({part:"Run"},()=>[Bk(),Um(),Km()]),...t.map(n=>Lt({part:String(a.formulas[n].now.name||"Formula")},()=>yw(n))),Lk(),af()]}var oB=(e,t,n)=>n.findIndex(o=>a.formulas[o]===a.formulas[e])===t;D$(nB);var iB={danger:"\u26A0 Danger",stop:"Stop",warning:"Warning",caution:"Caution",note:"Note"};function Ck(e){let t=r=>r.severity==="danger",n=[...e.cautions.filter(t),...e.cautions.filter(r=>!t(r))],o=r=>s`<ul>
      ${r.map(l=>s`<li class=${l.severity}><strong>${iB[l.severity]??l.severity}</strong> ${l.text}</li>`)}
    </ul>`,i=n.filter(r=>r.severity==="note");return s`<section class="watch" aria-labelledby="watch-title">
    <h2 id="watch-title">Cautions <small>worst first</small></h2>
    ${o(n.filter(r=>r.severity!=="note"))}
    ${i.length?s`<details ?open=${i.length<3}>
            <summary>${i.length} ${i.length===1?"note":"notes"}</summary>
            ${o(i)}
          </details>`:d}
  </section>`}function Wk(e,t){let n=e?.batches.findIndex(({numbers:l})=>l.includes(t))??-1;if(!e||n<0)return;let o=e.batches[n],i=t===1,r=o.weigh_out.filter(({vessel:l})=>l!=="melt"||i);return{plan:e,batch:o,place:`batches.${n}`,vessels:r,mark:o.mark}}function hr(e){let t=oo(e);return t?.finished_at?"done":t||io(e)?"under way":"not begun"}var rB=()=>Math.max(a.plan?.pieces.batches??0,...a.bench.batches.map(({batch:e})=>e));function sB(e){let{chosen:t}=a.bench;if(t!==void 0&&t<=e)return t;let n=Array.from({length:e},(i,r)=>r+1),o=i=>n.find(r=>hr(r)===i);return o("under way")??o("not begun")??1}function df(){let e=rB(),t=sB(e),n=oo(t),o=Wk(a.plan,t);return{number:t,of:e,kept:n,planned:o,weights:n?Wk(n.plan,t):o}}var Dn=({kept:e})=>!e&&a.is_old,gr=({plan:e,batch:t})=>e.cautions.filter(({severity:n,batch_pieces:o})=>n==="danger"&&(o===void 0||o===t.pieces));var aB=6,lB={"not begun":"\u25CB","under way":"\u25D0",done:"\u25CF"};function Ek({number:e,of:t}){if(t<2)return d;let n=Array.from({length:t},(i,r)=>r+1),o=i=>`Batch ${i}, ${hr(i)}`;return t>aB?s`<select
      aria-label="Which batch is weighed"
      @change=${i=>Ik(Number(i.target.value))}
    >
      ${n.map(i=>s`<option value=${i} ?selected=${i===e}>${o(i)}</option>`)}
    </select>`:ce("Which batch is weighed",String(e),n.map(i=>[String(i),s`<span class="status" aria-hidden="true">${lB[hr(i)]}</span> ${i}<small>
          ${hr(i)}</small
        >`]),i=>Ik(Number(i)))}function Ik(e){Mg(e),D(`Batch ${e}, ${hr(e)}`)}var qd="";function Nk(e){let{kept:t,number:n}=e;if(!t)return d;if(t.finished_at)return dB(e,t.finished_at);let i=(e.weights?.vessels??[]).flatMap(l=>l.rows).filter(({key:l})=>!ro(n,l).is_done).length,r=()=>i?jk(t.id):void ju(n);return s`<div class="batch-end">
    <p class="aside">Begun ${qk(t.begun_at)}; its weights stay as they were then.</p>
    ${qd===t.id?Hk(`${i===1?"1 row is":`${i} rows are`} not ticked.`,"The batch is done all the same",()=>{ju(n)}):s`<button type="button" class=${i?"":"strong"} ?disabled=${io(n)} @click=${r}>
            This batch is done
          </button>`}
  </div>`}function dB({kept:e,number:t},n){let{id:o}=e;return s`<div class="batch-end">
    <p><b>✓ This batch is done</b>, ${qk(n)}.</p>
    ${qd===o?Hk("What was ticked of it will be put away.","Put it away and weigh this batch once more",()=>{Wr(t)}):s`<button type="button" @click=${()=>jk(o)}>Start this batch anew</button>`}
  </div>`}function jk(e){qd=e,Q(),C(L("batch-stays"))}function Hk(e,t,n){let o=()=>{qd="",Q(),C(L("run-title"))};return s`<p><b>${e}</b></p>
    <div class="row">
      <button type="button" class="strong" id="batch-stays" @click=${o}>Leave it as it is</button>
      <button type="button" @click=${()=>(o(),n())}>${t}</button>
    </div>`}var uB=new Intl.DateTimeFormat("en-GB",{day:"numeric",month:"long",hour:"2-digit",minute:"2-digit"}),qk=e=>uB.format(new Date(e));var cB={pour:"Base",pipe:"Topping"},Uk=e=>new Map(e.flatMap(t=>t.rows.map(n=>[n.key,{row:n,vessel:t}])));function zk(e,t){let[n,o]=[Uk(e),Uk(t)],i=[...e,...t].some(({batter:p})=>p==="pipe"),r,l=({row:p,vessel:m})=>{let _=!i||m.batter===r;return r=m.batter,(_||!r?"":`${cB[r]}: `)+p.name+(p.adding?` for ${p.adding}`:"")},u=[...n].flatMap(([p,m])=>{let _=o.get(p)?.row;return _?.shown===m.row.shown?[]:[`${l(m)} ${m.row.shown}, ${_?`now ${_.shown}`:"now left out"}`]}),c=[...o].filter(([p])=>!n.has(p)).map(([,p])=>`${l(p)}, now ${p.row.shown}`);return[...u,...c]}var uf=3,cf=new Map,pf="";function pB(e){let{kept:t,weights:n,planned:o,of:i}=e;if(!t||t.finished_at||!n)return;let{complaint:r}=a;if(r&&!Of(r))return{told:[],dangers:[],refusal:"what is wrong stands above",mark:B(r)};if(!o){if(!a.plan)return;let p=i>1?`the run has no batch ${e.number} any more`:"the run has no such batch any more";return{told:[],dangers:[],refusal:p,mark:p}}if(o.mark===n.mark)return;let l=zk(n.vessels,o.vessels),u=new Set(gr(n).map(({text:p})=>p)),c=gr(o).flatMap(({text:p})=>u.has(p)?[]:[p]);return l.length||c.length?{told:l,dangers:c,mark:o.mark}:void 0}function Kk(e){let t=pB(e),{kept:n}=e;if(!t||!n)return d;if(cf.get(n.id)===t.mark)return hB(n.id);let o=t.dangers.length>0||t.refusal!==void 0;return s`<div class="changed ${o?"red":""}" role=${o?"alert":"status"}>
    <p>
      <b>The run has changed since this batch was begun; its weights stay.</b>
      ${mB(t)}
    </p>
    ${fB(t)}
    ${t.dangers.map(i=>s`<p class="danger"><strong>${$t}</strong> As it is now: ${i}</p>`)}
    ${pf===n.id?$B(e):gB(e,t)}
  </div>`}function mB({told:e,refusal:t}){if(t!==void 0)return s`<strong>No weights can be given as it is now:</strong> ${t}.`;let n=e.length-uf;return s`${e.slice(0,uf).join("; ")}${n>0?` and ${n} more.`:"."}`}var fB=({told:e})=>e.length>uf?s`<details>
        <summary>All ${e.length} changes</summary>
        <p>${e.join("; ")}.</p>
      </details>`:d;function hB(e){return s`<div class="changed passed">
    <p>The run has changed since this batch was begun; its weights stay.</p>
    <button type="button" @click=${()=>(cf.delete(e),Q())}>What has changed</button>
  </div>`}function gB(e,{mark:t,refusal:n}){let{id:o}=e.kept;return s`<div class="row">
    <button type="button" class="strong" @click=${()=>{cf.set(o,t),Q(),C(L("run-title"))}}>Keep weighing</button>
    ${n===void 0?s`<button type="button" @click=${()=>_B(e)}>Start this batch anew</button>`:d}
  </div>`}function _B(e){let{ticks:t,weigh_cup:n,id:o}=e.kept;if(!Object.keys(t).length&&n===void 0)return void Wr(e.number);pf=o,Q(),C(L("keep-weighing"))}function $B(e){let t=Object.keys(e.kept.ticks).length,n=()=>{pf="",Q(),C(L("run-title"))},o=()=>{n(),Wr(e.number)};return s`<p>
      <b>${t===1?"The 1 tick":`All ${t} ticks`} of this batch will be put away</b>, and what is in the
      vessels already was weighed by the old weights.
    </p>
    <div class="row">
      <button type="button" class="strong" id="keep-weighing" @click=${n}>Keep weighing</button>
      <button type="button" @click=${o}>Put the ticks away and start anew</button>
    </div>`}var Jk=({text:e})=>s`<p class="danger"><strong>${$t}</strong> ${e}</p>`;function Vk(e){let t=new Set(a.dangers.run.map(({text:o})=>o)),n=gr(e).filter(({text:o})=>!t.has(o));return n.length?s`<div class="dangers" role="alert">${n.map(Jk)}</div>`:d}var bB=({vessel:e})=>["lye","lye_pot","share"].includes(e),wB=({batter:e},t)=>!e||!t.batter||e===t.batter;function Qk(e,t){if(!bB(t))return d;let n=gr(e).filter(o=>wB(o,t));return n.length?s`<div class="dangers">${n.map(o=>s`${Jk(o)} ${yB(o)}`)}</div>`:d}function yB({batter:e,topic:t}){return!e||t==="heat"?s`<button type="button" class="to-cause" @click=${kB}>To the cautions</button>`:s`<button type="button" class="to-cause" @click=${()=>vB(e)}>
    To the superfat of the ${e==="pour"?"base":"topping"}
  </button>`}function vB(e){at(e),requestAnimationFrame(()=>C(oe(e,"/superfat")))}function kB(){f({view:"watch"}),C(L("watch-title"))}var mf=(e,t)=>s`<p class="do ${Dn(e)?"old":""}">${t}</p>`;function Gk(e,{batch:t,plan:n}){let{below_brim_mm:o,mass_each_g:i}=t.pour,r=o<.05?"Pour to the brim":`Pour to ${x($e(a.units,o))} below the brim`;return mf(e,s`${r}, <b>${x(H(a.units,i))}</b> ${n.cut?"the loaf":"each"}.`)}function Yk(e,{batch:t}){let n=t.pipe?.whippings[0]?.readings.find(o=>o.planned);return n?mf(e,s`Whip until the level weigh-cup holds <b>${x(H(a.units,n.net_g))}</b>.`):d}function Zk(e,{batch:t}){let{pipe:n}=t;return n?mf(e,s`Pipe <b>${S(n.volume_each_ml,0)} ml</b> on each, ${x(H(a.units,n.mass_each_g))} at the
      planned whipped density.`):d}function Xk({kept:e,number:t}){let{run:n,poured_by:o}=a.record,i=e&&Vt(t,e.begun_at);return!o||n!==a.run.file||i?d:s`<div class="banner quiet poured-by">
    <p>${ka(o.words)}. What stands here would be a base of its own.</p>
    <button type="button" @click=${()=>{Gt(o.order)}}>To the order</button>
  </div>`}var xB=({vessel:e})=>e==="lye"||e==="lye_pot";function ex(e,t,n){let o=a.plan?.lye_of_day;if(!xB(n)||!(o??TB()))return d;if(o&&!o.may_be_shared)return s`<p class="day-pot">${o.text}</p>`;let i=e.planned?.mark===t.mark;return s`<div class="day-pot" role="note">
    <p>
      <b>Out of a day's pot, or mixed by itself?</b> Your studio mixes one lye solution for several batches of a day. If
      this one comes out of that pot, <b>weigh no water and no alkali here</b>: one or the other, never both.
    </p>
    ${i?RB(e,n):s`<p>How much is taken out of it stands on the sheet that it was mixed by.</p>`}
    <a href=${Rt({name:"days",file:a.run.file})}>To Days, where each pot stands</a>
  </div>`}var TB=()=>!a.plan&&$(a.beside.studio?.now,"/days/one_lye_a_day")!==void 0;function RB(e,t){let{days:n,complaint:o,is_old:i}=nr("run");if(o)return s`<p>The days of this run cannot be told yet: Days says why.</p>`;if(!n||i)return s`<p>Asking for the days of this run ...</p>`;let r=AB(n,e.number,t);return r?s`<p>
      By the days of this run as planned now, out of the pot mixed on the evening of ${xe(r.made)} for
      ${Te(r.for)}:
    </p>
    ${DB(r,e.number,t)}
    <p>If another pot was mixed, as for an order, what stands at that one holds.</p>`:s`<p>
      By the days of this run as planned now, <b>this batch is mixed by itself</b>. In an order, the order's days hold.
    </p>`}var SB=({vessel:e,batter:t})=>e==="lye_pot"?"all":t==="pipe"?"topping":"base",AB=({lyes:e},t,n)=>e.find(o=>o.lye_of===SB(n)&&o.batches.some(({batch:i})=>i===t));function DB({batches:e,pot:t},n,o){let i=e.filter(({batch:l})=>l===n).flatMap(({shares:l})=>l),r=o.rows.filter(({role:l})=>!["water","ice","alkali"].includes(l)).map(({name:l})=>l);return s`<ul>
      ${i.map(l=>{let u=t.shares[l],c=u.top_up_g>0?x(X(a.units,ae(u,"top_up_"))):"";return s`<li>
          ${u.batter}: <b>${x(X(a.units,ae(u,"lye_"),"down"))}</b> of the lye
          solution${c?s`, and <b>${c}</b> of plain water`:d}
        </li>`})}
    </ul>
    ${r.length?s`<p>Into the share, as below: ${Ne(r)}.</p>`:d}`}function tx(e,{shown:t,beside:n}){if(e==="both")return[t,n];let o=e==="us"?"oz":"g";return[Ft(n)===o?n:t,""]}function nx(e,t,n){if(t.vessel==="share"&&!e.batch.lye_pot&&n.role==="lye_solution")return OB(e,t,n);let o=PB(e,t,n);return o===void 0?void 0:{place:o}}function PB({batch:e,plan:t,place:n,vessels:o},i,r){switch(i.vessel){case"fats":case"lye":case"batter":return ix(i,r,e,n);case"layers":return FB(r,e.pour.layers??[],`${n}.pour.layers`);case"dust":return ff(r.name,e.dust,`${n}.dust`);case"lye_pot":return r.role==="water"||r.role==="ice"?`${n}.lye_pot.water_g`:ff(r.name,e.lye_pot?.alkalis??[],`${n}.lye_pot.alkalis`);case"melt":{let l=o.filter(u=>u.vessel==="melt");return l.length===t.decorations.length?`decorations.${l.indexOf(i)}.make_g`:void 0}case"share":return MB(i,r,e,n)}}function OB({vessels:e},t,n){let o=e.find(r=>r.vessel==="lye"&&r.key===t.key.replace(/\.share$/,".lye"));return o?{working:{of:t.key,formula:"all of the lye solution = all that was weighed for it; what evaporated since is made up with plain water",with:o.rows.map(({name:r,shown:l})=>({name:r,value:l,from:o.title})),comes_to:n.shown,sources:[]}}:void 0}var ox=({key:e})=>Number(/^pipe\.(\d+)\./.exec(e)?.[1]??1)-1;function MB(e,t,n,o){let i=(n.pipe?.whippings??[]).slice(0,ox(e)),r=e.batter==="pipe"?i.reduce((l,{count:u})=>l+u,1):0;return t.role==="lye_solution"?`${o}.lye_pot.shares.${r}.lye_g`:t.role==="water"?`${o}.lye_pot.shares.${r}.top_up_g`:ix(e,t,n,o,"lye")}function ff(e,t,n){let o=t.findIndex(i=>i.name===e);return o<0?void 0:`${n}.${o}.g`}function ix(e,t,n,o,i=e.vessel){let r=ox(e),[l,u]=e.batter==="pipe"?[n.pipe?.whippings[r],`${o}.pipe.whippings.${r}`]:[n.pour,`${o}.pour`],c=(l?.ingredients??[]).findIndex(({name:p,goes_into:m,role:_})=>m===i&&(p===t.name||t.role==="ice"&&_==="water"));return c<0?void 0:`${u}.ingredients.${c}.g`}function FB(e,t,n){let o=(t??[]).findIndex(({name:i})=>i===(e.adding??e.name));return o<0||!e.adding?o<0?void 0:`${n}.${o}.g`:ff(e.name,t[o].colours,`${n}.${o}.colours`)}function hf(e,t,n){let o=n.words.filter(({is_order:r})=>r),i=n.rows.every(({key:r})=>ro(e.number,r).is_done);return s`<section class="vessel ${n.vessel} ${i?"filled":""}" aria-labelledby=${rx(n)}>
    <div class="vessel-head">
      <h3 id=${rx(n)}>
        ${n.title}${n.times?s` <b>${n.times} times</b>`:d}${n.day_before?s` <b>the day before</b>`:d}${i?s` <span class="all-in">✓ all in</span>`:d}
      </h3>
      ${o.map(({text:r})=>s`<p class="vessel-order">${r}</p>`)}
    </div>
    ${ex(e,t,n)} ${Qk(t,n)}
    ${yl(n.rows,({key:r})=>r,r=>LB(e,t,n,r))}
  </section>`}var rx=({key:e})=>`vessel-${e.replaceAll(".","-")}`;function LB(e,t,n,o){let{is_done:i,is_waiting:r}=ro(e.number,o.key),[l,u]=tx(a.units,o),c=Dn(e),m=[o.adding?`for ${o.adding}`:"",o.note].filter(Boolean).join(", ");return s`<div class="weigh ${o.role} ${i?"done":""} ${r?"waiting":""}">
    <label>
      <input
        type="checkbox"
        .checked=${P(i)}
        ?disabled=${e.kept?.finished_at!==void 0}
        @change=${_=>BB(e,t,o,_.target)}
      />
      <span class="name"
        >${o.name}${m?s` <small>${m}</small>`:d}${r?s` <small class="not-kept">not kept yet</small>`:d}</span
      >
      ${o.running_shown?s`<span class="running">total ${o.running_shown}</span>`:d}
      <span class="amount ${c?"old":""}"><b>${l}</b>${u?s` <i>${u}</i>`:d}</span>
    </label>
    ${CB(e,t,n,o)}
  </div>`}function BB(e,{mark:t},n,o){if(!Dn(e))return Dg(e.number,t,n.key,o.checked);o.checked=!o.checked,D("Not ticked: what is struck through is not to be weighed.")}function CB(e,t,n,o){let{planned:i}=e,r=i?.mark===t.mark?i.vessels.find(({key:m})=>m===n.key):void 0,l=i&&r&&nx(i,r,o);if(!l)return d;let u=`weigh.${e.number}.${o.key}`,c=a.open.has(u),p=`sum-${u.replaceAll(/[^\w]/g,"-")}`;return s`<button
      type="button"
      class="ask-how"
      aria-label="How the weight of ${o.name} is calculated"
      aria-expanded=${c?"true":"false"}
      aria-controls=${c?p:d}
      @click=${()=>He("open",u)}
    >
      ${c?"\u2013":"="}
    </button>
    ${c?s`<div class="sum" id=${p}>${"place"in l?Ic(l.place):ul(l.working)}</div>`:d}`}function gf(e,t){let n=e.flatMap(({title:o,words:i})=>i.filter(({is_order:r})=>!r).map(({text:r})=>({title:o,text:r})));return s`<details class="to-know">
    <summary>Superfat, heat and more to know</summary>
    ${t} ${n.map(({title:o,text:i})=>s`<p><b>${o}:</b> ${i}</p>`)}
  </details>`}function sx(e,t){let{planned:n,whip_today:o}=a;return!t||!n?void 0:(o?.of===n&&o.batch===e&&o.reading===t||WB(e,t),o?.batch===e&&o.reading===t?o:void 0)}var _f=!1;async function WB(e,t){let{planned:n}=a;if(_f||!n)return;_f=!0;let o={of:n,batch:e,reading:t},i={holds:$(n.run,"/pipe/whip/holds")??"",net:t};try{let r=await ta({...n,run:F(n.run,"/pipe/whip_now",i)});f({whip_today:{...o,...IB(r,e)}})}catch(r){if(!(r instanceof w))throw r;f({whip_today:{...o,complaint:B(r.complaint)}})}finally{_f=!1}}function IB(e,t){let n=e.batches.find(({numbers:o})=>o.includes(t));return n?{mark:n.mark,pieces:n.pipe?.whippings.map(o=>o.pieces_now)}:{}}var bf,$f,EB=e=>bf??(Ft(e)==="oz"||!e&&a.units==="us"?"oz":"g");function ax(e,t){let n=t.batch.pipe?.whippings??[];if(!n.some(l=>l.readings.length))return d;let o=Qo(e.number),i=EB(o),r=e.kept?.finished_at!==void 0;return s`<div class="cup">
    <div class="labelled"><label for="weigh-cup">Today's weigh-cup, net</label>${qn("weigh_cup")}</div>
    ${Zt("weigh_cup")}
    <div class="cup-row">
      <input
        id="weigh-cup"
        inputmode="decimal"
        autocomplete="off"
        .value=${P($f??o)}
        ?disabled=${r}
        @input=${l=>$f=l.target.value}
        @change=${l=>jB(e,t,l.target.value,i)}
      />
      ${ce("Unit of the weigh-cup",i,[["g","g"],["oz","oz"]],NB)}
    </div>
    ${HB(e,t,n,o)} ${UB(t,n)}
  </div>`}function NB(e){bf=e,Q()}function jB(e,{mark:t},n,o){$f=void 0;let i=Oe(n)?`${n.trim()} ${o}`:n.trim();if(bf=void 0,i===Qo(e.number))return Q();if(Dn(e))return D("Not taken: the weights are not those of what is typed."),Q();Pg(e.number,t,i),e.kept&&za(Vt(e.number,e.kept.begun_at),i)}function HB(e,t,n,o){if(!o)return d;let i=sx(e.number,o);return i?i.complaint!==void 0?s`<p class="alarm" role="status">${i.complaint}</p>`:i.mark!==t.mark?s`<p class="today" role="status">The run has changed since this batch was begun: go by the table.</p>`:s`<div class="today" role="status">
    ${n.map((r,l)=>s`<p>${qB(r,i.pieces?.[l]??null)}</p>`)}
  </div>`:s`<p class="today" role="status">Asking how far this bowl goes ...</p>`}function qB({pieces:e,count:t},n){if(n===null)return d;let o=t>1?"Each of these bowls pipes":"This bowl pipes",i=e-n;return s`${o} <b>${z(n,"piece")}</b> now.
    ${i>0?s`<strong>Short by ${i} at this whip.</strong>`:`Enough for the ${e} to make.`}`}function UB(e,t){let n=e.plan.cut?"casts":"pieces";return s`<details class="cup-table">
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
                  <th scope="row">${x(H(a.units,i.net_g))}${i.planned?" (planned)":""}</th>
                  <td>${S(i.overrun_percent,0)} %</td>
                  <td>${e.plan.cut?i.casts:i.pieces}</td>
                </tr>`)}
          </tbody>
        </table>`)}
  </details>`}var Ys="pour",lx=()=>df().kept!==void 0;function dx(e){Ta(),mo();let t=df(),n=a.bench.version!==void 0||a.bench.failed!==void 0;return s`<section class="weighing" data-part=${Ys} aria-labelledby="run-title">
    ${zB(t)} ${JB(t)} ${Xk(t)}
    ${t.weights&&n?s`${Vk(t.weights)} ${Kk(t)} ${VB(t,t.weights,e)}`:d}
    ${t.weights&&n&&!wf(t)?cx(t,t.weights,e):d}
    ${Nk(t)}
  </section>`}function zB(e){let{weights:t}=e;return s`<div class="weighing-head">
    <h1 id="run-title" tabindex="-1">${t?.plan.run??String(a.run.now.name??"")}</h1>
    ${t?s`<p class="which">${KB(e,t)}</p>`:d}
    <div class="row">
      ${h({label:"Pieces to sell",at:"/sell",count:!0,short:!0})} ${Ek(e)}
    </div>
  </div>`}function KB(e,{plan:t,batch:n,vessels:o}){let i=o.flatMap(u=>u.rows),r=i.filter(({key:u})=>ro(e.number,u).is_done).length,l=e.of>1?`Batch ${e.number} of ${e.of}: `:"";return s`<b>${l}${nn(t,n)}</b>, ${r} of ${i.length} weighed`}function JB({number:e,weights:t}){let{failed:n,unsent:o,told:i,complaints:r,version:l}=a.bench,u=o!==void 0&&io(e);return s`<div class="bench-told" role="status">
    ${i?.batch===e?s`<p class="alarm">${i.words}</p>
            <button type="button" @click=${Fg}>I have looked</button>`:d}
    ${u?s`<p class="alarm">
            <strong>Not kept yet:</strong> ${o}. What you tick is kept in this browser, and sent as soon as the
            program answers.
          </p>`:d}
    ${n!==void 0?s`<p class="alarm"><strong>What is ticked already could not be read:</strong> ${n}.</p>`:d}
    ${r.map(c=>s`<p class="alarm">${c}</p>`)}
    ${t||n!==void 0?d:s`<p class="hint">
            ${a.complaint?"No weights before this is corrected.":l===void 0?"Reading ...":""}
          </p>`}
  </div>`}function VB(e,t,n){let{vessels:o}=t,i=m=>o.filter(_=>_.batter===m),r=i(),l=r.filter(m=>m.day_before),u=r.filter(m=>!m.day_before),c=i("pipe").length>0,p=m=>m.map(_=>hf(e,t,_));return s`${eC(c,r)}
    <div class="batters ${c?"two":""}">
      ${Ud("ahead","To have ready",p(l))}
      ${Ud("base",c?"Base":"Batter",QB(e,t,i("pour"),l,n))}
      ${c?Ud("topping","Topping",[...p(i("pipe")),ZB(e,t),gf(i("pipe"),YB(e,t))]):d}
      ${Ud("after","At the end",p(u))}
    </div>`}var ux=({vessel:e})=>e==="lye"||e==="lye_pot";function wf(e){let n=(e.weights?.vessels??[]).filter(o=>ux(o)&&o.batter!=="pipe").flatMap(o=>o.rows);return n.length>0&&n.every(({key:o})=>ro(e.number,o).is_done)}var cx=(e,{plan:t,batch:n,mark:o},i)=>Jw({number:e.number,words:`${e.of>1?`batch ${e.number} of ${e.of}`:"this batch"}, ${nn(t,n)}`,seen:o,since:e.kept?.begun_at,is_struck:Dn(e),is_due:wf(e),show:i}),Ud=(e,t,n)=>n.some(o=>o!==d)?s`<div class="part-of ${e}">
        <h2 id="weigh-${e}">${t}</h2>
        ${n}
      </div>`:d;function QB(e,t,n,o,i){let r=({vessel:p})=>p==="layers",l=p=>p.map(m=>hf(e,t,m)),u=n.filter(p=>!r(p)),c=u.map(ux).lastIndexOf(!0);return[...l(u.slice(0,c+1)),wf(e)?cx(e,t,i):d,...l(u.slice(c+1)),Gk(e,t),...l(n.filter(r)),gf([...o,...n],GB(e,t))]}var px=(e,t,n=d)=>s`<p class=${Dn(e)?"old":""}>
    <b>Superfat as weighed:</b> ${t.map(o=>lt(o.superfat_percent.effective)).join(", ")} ${n}
  </p>`,GB=(e,{batch:t})=>px(e,[t.pour],wo("superfat_as_weighed")),YB=(e,{batch:t})=>px(e,t.pipe?.whippings??[]),ZB=(e,t)=>s`${Yk(e,t)} ${ax(e,t)} ${Zk(e,t)}`,XB={lye_pot:"Lye",melt:"Melt",dust:"Dust"};function eC(e,t){let n=[...new Set(t.flatMap(({vessel:i})=>XB[i]??[]))].join(", ").toLowerCase(),o=[["pour",e?"Base":"Batter"],...e?[["pipe","Topping"]]:[],...n?[["rest",n.replace(/^./,i=>i.toUpperCase())]]:[]];return o.length<2?d:(o.some(([i])=>i===Ys)||(Ys="pour"),s`<div class="narrow">${ce("What is shown",Ys,o,tC)}</div>`)}function tC(e){Ys=e,Q(),requestAnimationFrame(()=>document.querySelector(".batters")?.scrollIntoView({block:"start"}))}var mx=()=>s`${ai(lx()?"No new weights can be given.":void 0)} ${dx(()=>{Xe("record")})}`;var nC={"set-up":lf,watch:Ck,money:rv,days:Uy,mould:dv,print:pv};function fx(e){let t=s`${wa().map(o=>yn(o))} ${ba().map(vn)}`;if(e==="weigh")return s`${t} ${mx()}`;if(e==="record")return s`${t}
    ${ry({to_weights:()=>{Xe("weigh")},to_learned:()=>{Xe("learned")}})}`;if(e==="learned")return s`${t} ${ai()} ${nv()}`;let{plan:n}=a;return s`${t} ${ai()}
    <h1 id="run-title" tabindex="-1">${n?.run??String(a.run.now.name??"")}</h1>
    ${n?nC[e](n):oC(e)}`}function oC(e){return a.complaint?e==="set-up"?lf():s`<p class="hint">No figures yet: the set-up tells what is missing.</p>`:s`<p class="hint">Reading the run ...</p>`}var iC=()=>{f({new_run:{name:"",mould:"",formula:"",sell:""}}),requestAnimationFrame(()=>document.getElementById("new-run-name")?.focus())};function gx(){let e=a.new_run;if(!e)return s`<p class="choice"><button type="button" class="strong" @click=${iC}>New run</button></p>`;let{name:t,mould:n,formula:o}=e,i=Fl(e.sell),r=t.trim()&&n&&o&&i,l=()=>{pe(async()=>{await tl({name:t.trim(),mould:n,formula:o,sell:i}),f({new_run:void 0})})};return s`<section class="card" aria-labelledby="new-run">
    <h2 id="new-run">New run</h2>
    <div class="row">
      <div class="field">
        <label for="new-run-name" data-said="required">Name</label>
        <input
          id="new-run-name"
          .value=${P(t)}
          @input=${u=>v(e,{name:u.target.value})}
          autocomplete="off"
          spellcheck="false"
        />
      </div>
      ${hx(e,"mould","Mould",rC())} ${hx(e,"formula","Base",sC())}
      ${Ll("new-run-sell",e.sell,u=>v(e,{sell:u}))}
    </div>
    <div class="choice">
      <button type="button" class="strong" ?disabled=${!r} @click=${l}>Make the run</button>
      <button type="button" @click=${()=>f({new_run:void 0})}>Cancel</button>
    </div>
    ${r?d:s`<p class="hint">A run needs a name, a mould, a base, and how many pieces are to be sold.</p>`}
  </section>`}var rC=()=>[...(a.files?.moulds??[]).filter(e=>!e.shipped).map(e=>[e.file,e.name||e.file]),...a.catalogue.map(e=>[e.path,e.name])],sC=()=>(a.files?.formulas??[]).map(e=>[e.file,e.name||e.file]);function hx(e,t,n,o){let i=`new-run-${t}`;return s`<div class="field choose">
    <label for=${i} data-said="required">${n}</label>
    <select id=${i} @change=${l=>v(e,{[t]:l.target.value})}>
      <option value="" .selected=${P(e[t]==="")}>choose ...</option>
      ${o.map(([l,u])=>s`<option value=${l} .selected=${P(l===e[t])}>${u}</option>`)}
    </select>
  </div>`}var aC=(e,t)=>(t.changed??"").localeCompare(e.changed??"");function $x(){let e=a.files?.runs??[],t=e.filter(o=>!o.shipped).sort(aC),n=e.filter(o=>o.shipped);return s`${Wt("Runs")} ${gx()}
    <section aria-labelledby="runs-title">
      <h2 id="runs-title">Your runs</h2>
      ${t.length?on(t,_x):s`<p class="aside">No runs of your own in ${a.files?.folder} yet.</p>`}
    </section>
    <section aria-labelledby="examples-title">
      <h2 id="examples-title">Examples</h2>
      ${on(n,_x)}
    </section>
    ${It("run")}`}function _x(e){let{pieces:t,mould:n,due:o,made_on:i,changed:r}=e,l=[t===void 0?"":z(t,"piece"),n??"",o?`due ${N(o)}`:"",i?`made ${N(i)}`:r?`changed ${N(r)}`:""].filter(Boolean);return kn({kind:No,one:e,facts:l,picture:lC(n),open:()=>Nn(e.file)})}var lC=e=>a.files?.moulds.find(t=>t.name===e)?.file??a.catalogue.find(t=>t.name===e)?.path;var _i=({material:e,lot:t})=>`${e}:${t}`,bx=(e,t)=>e.material===t.material&&e.lot.toLowerCase()===t.lot.toLowerCase(),wx=(e,{lots:t})=>t.filter(n=>bx(n,e));function yf(e){return e[0]?.left.pieces!==void 0?{pieces:e.reduce((n,{left:o})=>n+(o.pieces??0),0)}:{g:Number(e.reduce((n,{left:o})=>n+(o.g??0),0).toFixed(6))}}function yx(e,{kind:t,of:n}){if(t==="counted"){let i=e?.materials.flatMap(l=>l.lots)??[],r=i.find(l=>_i(l).toLowerCase()===n.toLowerCase());return r?yf(i.filter(l=>bx(l,r))):{g:0}}return{pieces:e?.pieces.find(({batch:i})=>i===n)?.there??0}}var _r=({kind:e,of:t},n)=>`shelf-${`${e}-${t}-${n}`.replaceAll(/[^\w]+/g,"-")}`,kf=({complaint:e},t)=>e&&e.field===t&&!e.asks?B(e):void 0;function We(e,{name:t,label:n,kind:o,number:i,count:r,hint:l}){let u=_r(e,t),c=kf(e,t),p=c??l;return s`<div class="field ${c?"wants":""}">
    <label for=${u}>${n}</label>
    <input
      id=${u}
      type=${o??"text"}
      inputmode=${r?"numeric":i?"decimal":d}
      autocomplete="off"
      spellcheck="false"
      .value=${P(e.typed[t]??"")}
      aria-invalid=${c?"true":"false"}
      aria-describedby=${p?`${u}-said`:d}
      @input=${m=>Qt(e,{typed:{[t]:m.target.value}})}
    />
    ${p?s`<p id="${u}-said" class=${c?"complaint":"hint"}>${p}</p>`:d}
  </div>`}var et=({typed:e},t)=>e[t]?.trim()||void 0;function zd(e,t,n,o){let i=(e.typed[t]??"").trim().toLowerCase(),r=i.split(/\s+/),l=o.filter(c=>r.every(p=>c.toLowerCase().includes(p)));return o.some(c=>c.toLowerCase()===i)||!l.length?d:s`<div class="choice" role="group" aria-label=${n}>
      ${l.slice(0,vf).map(c=>s`<button type="button" @click=${()=>Qt(e,{typed:{[t]:c}})}>${c}</button>`)}
    </div>
    ${l.length>vf?s`<p class="hint">${l.length-vf} more: type a part of the name.</p>`:d}`}var vf=8;var $r=({kind:e,of:t})=>`shelf-form-${`${e}-${t}`.replaceAll(/[^\w]+/g,"-")}`;function br(e){let{form:t,title:n,act_words:o,fields:i}=e,r=$r(t),l=()=>{wc(t),C(dC(t))};return s`<form
    class="shelf-act"
    aria-labelledby=${r}
    @submit=${u=>{u.preventDefault(),xx(e)}}
  >
    <p class="part-title" id=${r} tabindex="-1">${n}</p>
    ${i} ${uC(e)}
    <div class="row acts-of-form">
      <button type="submit" class="strong" ?disabled=${t.is_asking}>
        ${t.is_asking?"Recording ...":o}
      </button>
      <button type="button" @click=${l}>Leave it</button>
    </div>
  </form>`}var dC=({kind:e,of:t})=>L(`shelf-open-${`${e}-${t}`.replaceAll(/[^\w]+/g,"-")}`),vx=(e,t)=>`shelf-open-${`${e}-${t}`.replaceAll(/[^\w]+/g,"-")}`,kx="shelf-told";async function xx({form:e,act:t,names:n}){let o=t();if(o&&await Qa(e,o))return C(L(kx));let i=En(e)?.complaint;i&&C(L(n.includes(i.field)&&!i.asks?_r(e,i.field):`${$r(e)}-said`))}function uC(e){let{form:t,names:n}=e,{complaint:o}=t;if(!o||n.includes(o.field)&&!o.asks)return d;let i=o.choices?.find(({confirmed:l})=>l!==void 0)?.confirmed,r=l=>()=>{l(),xx(e)};return s`<div role="alert">
    <p class="alarm" id="${$r(t)}-said" tabindex="-1">${Te(B(o))}</p>
    ${i===void 0?d:s`<button type="button" class="answer" @click=${r(()=>x_(t,i))}>It is so</button>`}
    ${o.asks==="seen"?s`<button type="button" class="answer" @click=${r(()=>T_(t,yx(a.stock.list,t)))}>
            Record it even so
          </button>`:d}
  </div>`}function wr(e){let{told:t}=a.stock;return t?.of!==e?d:s`<div class="told" id=${kx} tabindex="-1">
    <div>${t.sentences.map(n=>s`<p>${Te(n)}</p>`)}</div>
  </div>`}var cC={metric:["g","kg"],us:["oz","lb"],both:["g","kg","oz","lb"]},pC={metric:["ml","l"],us:["fl oz"],both:["ml","l","fl oz"]};function xf(e){let t=[...cC[a.units],...pC[a.units]];return e==="pieces"?["pieces"]:e==="mass"?t:[...t,"pieces"]}var Tx=(e,t,n)=>e.typed[`${t}-unit`]??(n==="pieces"?"pieces":void 0);function Kd(e,t,n,o){let i=xf(o),r=Rx(e.typed[t])?void 0:Tx(e,t,o);return s`<div class="amount-asked">
    ${We(e,{name:t,label:n,number:!0})}
    <div class="choice" role="group" aria-label="Unit: ${n}">
      ${i.map(l=>s`<button
            type="button"
            aria-pressed=${l===r?"true":"false"}
            @click=${()=>Qt(e,{typed:{[`${t}-unit`]:l}})}
          >
            ${l}
          </button>`)}
    </div>
  </div>`}var Rx=(e="")=>e.trim()!==""&&!Oe(e);function Jd(e,t,n){let o=(e.typed[t]??"").trim();if(!o)return void Xo(e,t,"How much is it?");if(Rx(o))return o;let i=Tx(e,t,n);return i?`${o} ${i}`:void Xo(e,t,"In which unit?")}var Vd=()=>a.stock.list?.names,Dx=(e,t)=>s`${We(e,{name:"on",label:t,kind:"date"})}
  ${We(e,{name:"best-before",label:"Best before, if it says so",kind:"date"})}`;function Px(e){let t=Vd()?.currency;return br({form:e,title:"A lot that came",act_words:"Record it as bought",names:["bought","pack","packs","price","seller","lot","on","best-before"],fields:s`${We(e,{name:"bought",label:"Material"})}
      ${zd(e,"bought","Materials",Vd()?.materials??[])}
      ${Kd(e,"pack","One pack holds","either")}
      <div class="row">
        ${We(e,{name:"packs",label:"Packs",count:!0,hint:"left blank: one"})}
        ${We(e,{name:"price",label:`Price of one pack${t?`, ${t}`:""}`,number:!0,hint:t?"left blank: unpriced":'with its currency, as "27.50 EUR"; left blank: unpriced'})}
      </div>
      ${We(e,{name:"seller",label:"Seller"})} ${zd(e,"seller","Sellers",Vd()?.sellers??[])}
      ${We(e,{name:"lot",label:"Lot number",hint:"as on the pack; left blank: one of your own"})}
      <div class="row">${Dx(e,"Bought on")}</div>`,act:()=>{let n=Jd(e,"pack","either");return n?{bought:et(e,"bought")??"",pack:n,price:et(e,"price"),...Ox(e)}:void 0}})}var Ox=e=>({packs:et(e,"packs"),seller:et(e,"seller"),lot:et(e,"lot"),on:et(e,"on"),"best-before":et(e,"best-before")});function Mx(e){return br({form:e,title:"A lot that you made of others: lye solution, a blend",act_words:"Record it as made",names:["made","pack","of","lot","on","best-before"],fields:s`${We(e,{name:"made",label:"What it is"})}
      ${zd(e,"made","Made ahead",Vd()?.made_ahead??[])}
      ${Kd(e,"pack","It makes","either")} ${mC(e)}
      ${We(e,{name:"lot",label:"Lot number",hint:"left blank: one of your own"})}
      <div class="row">${Dx(e,"Made on")}</div>`,act:()=>{let t=Jd(e,"pack","either"),n=t?gC(e):void 0;return n?{made:et(e,"made")??"",pack:t,of:n,...Ox(e)}:void 0}})}var Sx=()=>a.stock.list?.materials.flatMap(({lots:e})=>e)??[];function mC(e){let t=(i,r)=>Qt(e,{sources:e.sources.map((l,u)=>u===i?{...l,...r}:l)}),n=()=>Qt(e,{sources:[...e.sources,{lot:"",amount:"",unit:""}]}),o=kf(e,"of");return s`<div class="made-of" role="group" aria-label="What is in it">
    ${e.sources.map((i,r)=>fC(e,i,r,l=>t(r,l)))}
    <button type="button" @click=${n}>
      ${e.sources.length?"And of another lot":"What of which lot is in it"}
    </button>
    <p class=${o?"complaint":"hint"} id=${_r(e,"of")} tabindex="-1">
      ${o??"Each lot loses what you took of it. Named none, it is of lots that are unknown."}
    </p>
  </div>`}function fC(e,t,n,o){let i=_r(e,`of-${n}`),r=Sx().find(c=>_i(c)===t.lot),l=xf(Fx(r)),u=()=>Qt(e,{sources:e.sources.filter((c,p)=>p!==n)});return s`<div class="row">
    <div class="field">
      <label for="${i}-lot">Lot</label>
      <select id="${i}-lot" .value=${P(t.lot)} @change=${c=>o({lot:Ax(c)})}>
        <option value="" ?selected=${!t.lot}>Choose</option>
        ${Sx().map(c=>s`<option value=${_i(c)} ?selected=${_i(c)===t.lot}>
              ${hC(c)}, lot ${c.lot}: ${Mt(a.units,c.left)}
            </option>`)}
      </select>
    </div>
    <div class="field">
      <label for="${i}-amount">So much of it</label>
      <input
        id="${i}-amount"
        inputmode="decimal"
        autocomplete="off"
        .value=${P(t.amount)}
        @input=${c=>o({amount:Ax(c)})}
      />
    </div>
    <div class="choice" role="group" aria-label="Unit of what is taken, ${n+1}">
      ${l.map(c=>s`<button type="button" aria-pressed=${c===t.unit?"true":"false"} @click=${()=>o({unit:c})}>
            ${c}
          </button>`)}
    </div>
    <button type="button" aria-label="Leave out lot ${n+1}" @click=${u}>Leave out</button>
  </div>`}var Ax=e=>e.target.value,Fx=e=>e===void 0?"either":e.left.pieces===void 0?"mass":"pieces";function hC({material:e,make:t}){let n=a.stock.list?.materials.find(o=>o.material===e);return t??n?.shown_as??e}function gC(e){let t=[];for(let{lot:n,amount:o,unit:i}of e.sources){if(!n)return void Xo(e,"of","Which lot is it?");if(!o.trim())return void Xo(e,"of","How much of it is taken?");if(Oe(o)&&!i)return void Xo(e,"of","In which unit is it?");t.push(`${n}=${Oe(o)?`${o.trim()} ${i}`:o.trim()}`)}return t}function Lx(e,t){let n=Fx(t[0]);return br({form:e,title:`How much is there of lot ${t[0].lot}?`,act_words:"Record the count",names:["counted","why","on"],fields:s`${t.length>1?s`<p class="hint">${t.length} deliveries have this lot number: count them together.</p>`:d}
    ${Kd(e,"counted","There now",n)}
    ${We(e,{name:"why",label:"Why, if it is not what was left",hint:"spilt, thrown away"})}
    ${We(e,{name:"on",label:"Counted on",kind:"date"})}`,act:()=>{let o=Jd(e,"counted",n);return o?{counted:[`${e.of}=${o}`],why:et(e,"why"),on:et(e,"on")}:void 0}})}function Bx(){let{materials:e=[]}=a.stock.list??{};return s`<section class="shelf-part" aria-labelledby="materials-title">
    <h2 id="materials-title">Materials</h2>
    <div class="row">${Zs("bought","","Bought",!0)} ${Zs("made","","Made of others")}</div>
    ${Xs("bought","",Px)} ${Xs("made","",Mx)} ${_C()}
    ${e.length?s`<p class="aside">What is best before an earlier day stands first, and is taken first.</p>
            ${e.map($C)}`:s`<p class="aside">No lot has anything left.</p>`}
  </section>`}function Zs(e,t,n,o=!1,i,r=""){let l=()=>{bc({kind:e,of:t,seen:i}),C(L($r({kind:e,of:t}))),requestAnimationFrame(()=>document.getElementById($r({kind:e,of:t}))?.scrollIntoView({block:"nearest"}))};return s`<button
    type="button"
    id=${vx(e,t)}
    class=${o?"strong":""}
    aria-expanded=${En({kind:e,of:t})?"true":"false"}
    aria-label=${r?`${n}: ${r}`:d}
    @click=${l}
  >
    ${n}
  </button>`}function Xs(e,t,n){let o=En({kind:e,of:t});return o?n(o):d}function _C(){let e=a.stock.list?.not_counted??[];if(!e.length)return d;let t=()=>{bc({kind:"take-have",of:""});let o=En({kind:"take-have",of:""});o&&Qa(o,{"take-have":!0,on:o.typed.on})},n=En({kind:"take-have",of:""})?.complaint?.line;return s`<div class="part">
    <p>The studio's file lists what is no lot yet: ${e.join(", ")}. Lots alone are counted.</p>
    <button type="button" @click=${t}>Take it over as lots, once</button>
    ${n?s`<p class="alarm" role="alert">${n}</p>`:d}
  </div>`}var $C=e=>s`<section class="material" aria-label=${e.shown_as}>
    <h3>${e.shown_as}</h3>
    <ul class="lots">
      ${e.lots.map(t=>bC(t,e))}
    </ul>
  </section>`;function bC(e,t){let n=_i(e),o=wx(e,t),i=o[0]===e;return s`<li class="lot ${e.is_past?"past":""}" data-lot=${n}>
    <div class="lot-told">
      <p class="lot-left">
        <b class="code">${e.lot}</b>${e.make?s` <span>${e.make}</span>`:d} ${wC(e)}
      </p>
      <p class="lot-facts">${Tf(e).map(r=>s`<span>${r}</span> `)}</p>
      ${e.is_past?Rf(e):d}
    </div>
    <div class="lot-acts">
      ${i?Zs("counted",n,"Counted",!1,yf(o),`lot ${e.lot}`):d}
      <button type="button" aria-label="Where it went: lot ${e.lot}" @click=${()=>Be(`lot ${e.lot}`)}>
        Where it went
      </button>
    </div>
    ${i?wr(n):d}
    ${i?Xs("counted",n,r=>Lx(r,o)):d}
  </li>`}function wC({left:e,packs:t,pack:n}){let o=(e.g??e.pieces??0)<0,i=e.pieces===void 0?{g:-(e.g??0)}:{pieces:-e.pieces};return o?s`<span class="below"
        >${Mt(a.units,i)} more was taken than was recorded: count what is there</span
      >`:s`<b>${Mt(a.units,e)}</b>
        <span class="aside">left of ${t===1?"":`${t} \xD7 `}${n}</span>`}function Tf({best_before:e,is_past:t,origin:n,on:o,seller:i,paid:r,currency:l}){let u={bought:"bought",made:"made","before records":"there before records began,"}[n];return[e&&!t?`best before ${N(e)}`:"",`${u} ${N(o)}${i?` from ${i}`:""}`,r!==null?`${r} ${l} in all`:n==="bought"?"unpriced":""].filter(Boolean)}var Rf=({best_before:e,lot:t})=>s`<p class="past-words">
    Best before ${N(e)}, which is past. Is ${t} still good? No batch takes it unless you choose it.
  </p>`;function Wx(){let{pieces:e=[]}=a.stock.list??{};return s`<section class="shelf-part" aria-labelledby="pieces-title">
    <h2 id="pieces-title">Pieces</h2>
    ${e.length?s`<ul class="lots">
            ${e.map(yC)}
          </ul>`:s`<p class="aside">
            No pieces are there. Those of a batch stand here once its record says how many were made.
          </p>`}
  </section>`}var Cx=[["sold","Sold"],["given","Given away"],["spoilt","Spoilt"],["counted-pieces","Counted"]];function yC(e){let{batch:t,run:n,made:o,there:i}=e;return s`<li class="lot pieces-of" data-batch=${t}>
    <div class="lot-told">
      <p class="lot-left">
        <b class="code">${t}</b> <span>${n}</span> ${o===null?d:s`<b>${i} there</b>`}
      </p>
      <p class="lot-facts">
        <span>${o===null?"How many were made is not noted yet":Sf(e)}</span> ${vC(e)}
      </p>
    </div>
    <div class="lot-acts">
      ${o===null?d:Cx.map(([r,l])=>Zs(r,t,l,!1,{pieces:i},`pieces of ${t}`))}
      <button type="button" aria-label="Its record: ${t}" @click=${()=>li(e.file,e.id)}>
        Its record
      </button>
      <button type="button" aria-label="What is in it: ${t}" @click=${()=>Be(`batch ${t}`)}>
        What is in it
      </button>
    </div>
    ${wr(t)} ${Cx.map(([r])=>Xs(r,t,l=>xC(l,e)))}
  </li>`}function Sf({made:e,rejected:t,sold:n,given:o,spoilt:i,counted:r=0}){let l=[[t,"rejected"],[n,"sold"],[o,"given away"],[i,"spoilt"],[Math.max(r,0),"more by count"],[Math.max(-r,0),"fewer by count"]];return[`${e??0} made`,...l.filter(([u])=>u).map(([u,c])=>`${u} ${c}`)].join(", ")}function vC({cures_until:e,for_sale:t,why_not:n,made:o}){let i=e?`cures until ${N(e)} by its formulas`:"";return t?s`<span>${i?`\u25D4 noted as ready, and ${i}`:"\u2713 for sale"}</span>`:o===null||!n?i?s`<span>◔ ${i}</span>`:d:s`${i?s`<span>◔ ${i}</span> `:d}<span
      >✗ not for sale: ${Te(n)}</span
    >`}var kC={sold:["Sold","Record them as sold","Sold on"],given:["Given away","Record them as given away","Given on"],spoilt:["Spoilt","Record them as spoilt","Found on"],"counted-pieces":["Counted","Record the count","Counted on"]};function xC(e,{batch:t,there:n=0}){let{kind:o}=e,[i,r,l]=kC[o],u=o==="sold"||o==="given";return br({form:e,title:`${i}, of ${t}: ${n} there`,act_words:r,names:[o,"for","order","why","on"],fields:s`${We(e,{name:o,label:o==="counted-pieces"?"Pieces there":"Pieces",count:!0})}
    ${u?TC(e):We(e,{name:"why",label:"Why"})}
    ${We(e,{name:"on",label:l,kind:"date"})}`,act:()=>({[o]:[`${t}=${et(e,o)??""}`],on:et(e,"on"),why:et(e,"why"),order:e.typed.order||void 0,for:e.typed.order?void 0:et(e,"for")})})}function TC(e){let t=a.files?.orders.filter(({shipped:i})=>!i)??[],{order:n}=e.typed,o=i=>Qt(e,{typed:{order:i===n?"":i}});return s`${t.length?s`<p class="question" id="for-order-${e.kind}">For an order</p>
          <div class="choice words" role="group" aria-labelledby="for-order-${e.kind}">
            ${t.map(({file:i,name:r,pieces:l,due:u})=>s`<button
                  type="button"
                  aria-pressed=${i===n?"true":"false"}
                  @click=${()=>o(i)}
                >
                  ${r||i}
                  <small
                    >${[l===void 0?"":z(l,"piece"),u?`due ${N(u)}`:""].filter(Boolean).join(", ")}</small
                  >
                </button>`)}
          </div>`:d}
  ${n?d:We(e,{name:"for",label:t.length?"Or for whom":"For whom",hint:"may be left blank"})}`}function Ix(){let{list:e,failed:t}=a.stock;return s`<h1 tabindex="-1">Shelf</h1>
    <div class="shelf-view">
      ${t!==void 0?s`<p class="alarm" role="alert"><strong>What stands there could not be read:</strong> ${t}.</p>`:d}
      ${e?s`${RC()} ${SC()} ${AC()} ${Bx()} ${Wx()}`:s`<p class="hint">${t===void 0?"Reading ...":""}</p>`}
    </div>`}function RC(){let{list:e,told:t}=a.stock;return!t||!e?d:e.pieces.some(({batch:o})=>o===t.of)||e.materials.some(({lots:o})=>o.some(i=>`${i.material}:${i.lot}`===t.of))?d:wr(t.of)}function SC(){let e=a.finding?.key==="trail"?a.finding.text:"";return s`<form class="row find-trail" @submit=${n=>{n.preventDefault(),e.trim()&&(f({finding:void 0}),Be(e.trim()))}}>
    <div class="field">
      <label for="find-trail">Which pieces hold a lot, and what is in a batch: its number</label>
      <input
        id="find-trail"
        autocomplete="off"
        spellcheck="false"
        .value=${P(e)}
        @input=${n=>f({finding:{key:"trail",text:n.target.value}})}
      />
    </div>
    <button type="submit" ?disabled=${!e.trim()}>Follow it</button>
  </form>`}function AC(){let{has_records:e,notes:t=[]}=a.stock.list??{},n=t.filter(({severity:o})=>o==="danger");return s`${e?d:s`<p class="aside">Nothing is recorded in this folder yet.</p>`}
  ${n.map(({text:o})=>s`<p class="alarm">${Te(o)}</p>`)}`}function Nx(){let{trail:e}=a.stock,{trail:t,complaint:n,choices:o=[],of:i=""}=e??{};return s`<h1 tabindex="-1">${t?PC(t):i}</h1>
    <div class="trail">
      <div class="row">
        ${DC(e)}
        ${t?s`<button type="button" @click=${()=>window.print()}>Print</button>`:d}
      </div>
      ${n?s`<p class="alarm" role="alert">${n}</p>`:d}
      ${o.length?s`<div class="row">
              ${o.map(r=>s`<button type="button" @click=${()=>Be(r)}>The ${r}</button>`)}
            </div>`:d}
      ${t?OC(t):n?d:s`<p class="hint">Reading ...</p>`}
    </div>`}function DC(e){return e?.order!==void 0&&e.order===a.order?.open.file?s`<button type="button" @click=${()=>f({view:"order"})}>Back to the order</button>`:s`<button type="button" @click=${()=>f({view:"shelf"})}>Back to the shelf</button>`}function PC({asked:e,is:t,batches:n}){return t==="lot"?`Where lot ${e} went`:t==="batch"?`What is in ${e}`:`What ${n.flatMap(({went:i})=>i).find(i=>i.for)?.for??e} got`}function OC(e){let{is:t,lots:n,batches:o,gaps:i}=e,r=s`<section class="shelf-part" aria-labelledby="trail-lots">
    <h2 id="trail-lots">${t==="lot"?"The lot":"Lots in it"}</h2>
    ${n.length?s`<ul class="lots">
            ${n.map(MC)}
          </ul>`:s`<p class="aside">No lot of it is known.</p>`}
  </section>`,l=s`<section class="shelf-part" aria-labelledby="trail-batches">
    <h2 id="trail-batches">${t==="lot"?"Batches that hold it":t==="batch"?"The batch":"Batches"}</h2>
    ${o.length?s`<ul class="lots">
            ${o.map(u=>LC(u,e))}
          </ul>`:s`<p class="aside">No batch has taken of it.</p>`}
  </section>`;return s`${t==="lot"?s`${r} ${l}`:s`${l} ${r}`} ${NC(i)}`}var Mo=(e,t,n=t)=>s`<button type="button" class="to-trail" @click=${()=>Be(`${e} ${t}`)}>${n}</button>`;function MC(e){let{shown_as:t}=e;return s`<li class="lot" data-lot=${e.lot}>
    <div class="lot-told">
      <p class="lot-left">
        ${Mo("lot",e.lot)} <span>${e.make??t}</span> <b>${Mt(a.units,e.left)}</b>
        <span class="aside">left of ${e.packs===1?"":`${e.packs} \xD7 `}${e.pack}</span>
      </p>
      <p class="lot-facts">${Tf(e).map(n=>s`<span>${n}</span> `)}</p>
      ${e.is_past?Rf(e):d} ${Ex("Made of",e.from_lots)} ${Ex("Went into",e.into_lots)}
      ${e.counts.map(({on:n,by:o,why:i})=>s`<p class="lot-facts">Counted ${N(n)}: ${FC(o)}${i?` (${i})`:""}</p>`)}
    </div>
  </li>`}function FC({g:e,pieces:t}){let n=e??t??0;return n?`${Mt(a.units,t===void 0?{g:Math.abs(n)}:{pieces:Math.abs(n)})} ${n<0?"less":"more"} than was recorded`:"as it was"}var Ex=(e,t)=>t.length?s`<p class="trail-line">
        ${e}
        ${t.map(n=>s`${Mo("lot",n.lot)} <span>${n.material}, ${Mt(a.units,n.amount)}</span> `)}
      </p>`:d;function LC(e,{is:t,asked:n}){let{batch:o,run:i,begun_on:r,rows:l,pieces:u,went:c,cost:p,lines:m}=e;return s`<li class="lot pieces-of" data-batch=${o}>
    <div class="lot-told">
      <p class="lot-left">
        ${t==="batch"&&o===n?s`<b class="code">${o}</b>`:Mo("batch",o)} <span>${i}</span>
        ${m.length||u.made===null?d:s`<b>${u.there} there</b>`}
      </p>
      <p class="lot-facts">
        <span>begun ${N(r)}</span>
        ${m.length?d:s`<span>${u.made===null?"how many were made is not noted":Sf(u)}</span>`}
        ${p?s`<span>${WC(p)}</span>`:d}
      </p>
      ${BC(e)}
      ${c.length?s`<ul class="trail-went">
              ${c.map(IC)}
            </ul>`:d}
      <ul class="trail-rows">
        ${l.map(EC)}
      </ul>
    </div>
    <div class="lot-acts">
      <button type="button" aria-label="Its record: ${o}" @click=${()=>{li(e.file,e.id)}}>
        Its record
      </button>
    </div>
  </li>`}function BC({poured_from:e,lines:t}){return e?s`<p class="trail-line">
      Poured from ${Mo("batch",e.batch)} <span>(${CC(e.share_percent)})</span>
    </p>`:t.length?s`<p class="trail-line">Poured into ${t.map(n=>s`${Mo("batch",n)} `)}</p>`:d}var CC=e=>`${Math.round(e*10)/10} %`;function WC({materials:e,unpriced:t}){let n=e.map(({amount:i,currency:r})=>`${i} ${r}`).join(" and "),o=t.length?`unpriced: ${t.join(", ")}`:"";return[n?`its materials cost ${n}`:"",o].filter(Boolean).join("; ")}function IC({what:e,pieces:t,on:n,order:o,for:i,why:r}){let l={sold:"sold",given:"given away",spoilt:"spoilt",counted:""}[e],u=Math.abs(t),c=e==="counted"?`${u} ${t<0?"fewer":"more"} by count`:`${u} ${l}`,p=o??i;return s`<li>
    ${c} ${p?s`to ${Mo("order",p,i??p)}`:d} on ${N(n)}${r?` (${r})`:""}
  </li>`}function EC({shown_as:e,weighed:t,from:n,unknown:o}){let i=(o.g??o.pieces??0)>0;return s`<li>
    <span>${e}, ${Mt(a.units,t)}</span>
    ${n.map(r=>s`<span class="trail-from"
          >${Mo("lot",r.lot)} ${n.length>1||i?Mt(a.units,r.amount):d}
          ${r.make??d}</span
        > `)}
    ${i?s`<span class="trail-unknown"
            >${n.length?`${Mt(a.units,o)} of`:"of"} a lot that nobody noted</span
          >`:d}
  </li>`}function NC(e){return e.length?s`<section class="shelf-part" aria-labelledby="trail-gaps">
    <h2 id="trail-gaps">Batches that may hold it too</h2>
    <p>They weighed the same material, and nobody noted of which lot.</p>
    <ul class="trail-went">
      ${e.map(({batch:t,run:n,shown_as:o})=>s`<li>${Mo("batch",t)} ${n}: ${o}</li>`)}
    </ul>
  </section>`:d}function jx(){let e=uo();return s`${Wt("Tips")}
    <section aria-labelledby="own-tips">
      <h2 id="own-tips">Your own tips</h2>
      ${vl(Zn,"Each file is named by the studio, or by the runs that use its tips.",t=>Nr(Zn,t))}
      ${e?V$(e):d}
      ${kl({label:"A new tip of your own",add:e?`Add it to ${e.file}`:"Begin a file with it",act:t=>e?Promise.resolve(Y$(t)):Ma(Zn,np(t)),tried:pe})}
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
          ${Yr().map(({name:t,opening:n,area_mm2:o})=>s`<tr>
                <th scope="row">${t}</th>
                <td>${n??""}</td>
                <td>${o===void 0?"":S(o,1)}</td>
              </tr>`)}
        </tbody>
      </table>
    </section>
    ${It("tips")}`}var Ux=document.getElementById("page");function zx(){let{view:e,fault:t}=a;return s` <button type="button" class="skip" @click=${()=>document.getElementById("main")?.focus()}>
      Skip to the figures
    </button>
    ${Hy()} ${d$()}
    <main
      id="main"
      tabindex="-1"
      data-view=${e}
      class=${a.is_old&&!ct(e)&&e!=="order"&&e!=="trail"?"old-now":""}
    >
      ${t?s`${e==="reading"?s`<h1>Brimwright</h1>`:d}
              <p class="alarm" role="alert">${t}</p>`:d}
      ${HC()}
    </main>
    <p class="unseen" role="status">${a.announcement}</p>`}var jC={runs:$x,orders:By,formulas:kw,moulds:xw,fats:ab,tips:jx,shelf:Ix};function HC(){let{view:e,fault:t}=a;return On(e)?fx(e):ct(e)?jC[e]():e==="formula"?ww():e==="order"?Ly():e==="trail"?Nx():t?d:s`<h1>Brimwright</h1>
    <p>Reading the runs of this folder ...</p>`}kh(()=>{dw(),St(zx(),Ux),zC()});St(zx(),Ux);document.addEventListener("keydown",e=>{if(!(e.ctrlKey||e.metaKey)||e.key.toLowerCase()!=="z"||ct(a.view)&&!a.mould)return;e.preventDefault();let{undo:t,redo:n}=Rd();(e.shiftKey?n:t)?.()});document.addEventListener("visibilitychange",()=>{if(document.visibilityState==="visible")return Za();ht()});function qC(){if(!a.run.file)return Af();f({fault:void 0}),ht(),se()}function Af(){f({fault:void 0}),_w().catch(e=>{f({fault:UC(e)}),e instanceof w&&e.may_pass&&window.setTimeout(Af,2e3)})}function UC(e){return e instanceof w&&[401,403].includes(e.status)?"This address is from an earlier start. Open the address that brimwright printed this time: it may be pasted here.":e instanceof Error?e.message:String(e)}var Hx=new ResizeObserver(([{target:e}])=>Kx(e.offsetHeight)),qx=null;function zC(){let e=document.querySelector(".foremost");e!==qx&&(Hx.disconnect(),e?Hx.observe(e):Kx(0),qx=e)}var Kx=e=>document.documentElement.style.setProperty("--foremost",`${e}px`);Th();s$();gw();Pf(e=>{Xi(),e&&qC()});Af();
