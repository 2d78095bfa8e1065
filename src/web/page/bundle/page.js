var lo=globalThis,po=lo.ShadowRoot&&(lo.ShadyCSS===void 0||lo.ShadyCSS.nativeShadow)&&"adoptedStyleSheets"in Document.prototype&&"replace"in CSSStyleSheet.prototype,js=Symbol(),Cs=new WeakMap,uo=class{constructor(t,n,o){if(this._$cssResult$=!0,o!==js)throw Error("CSSResult is not constructable. Use `unsafeCSS` or `css` instead.");this.cssText=t,this.t=n}get styleSheet(){let t=this.o,n=this.t;if(po&&t===void 0){let o=n!==void 0&&n.length===1;o&&(t=Cs.get(n)),t===void 0&&((this.o=t=new CSSStyleSheet).replaceSync(this.cssText),o&&Cs.set(n,t))}return t}toString(){return this.cssText}},Ns=e=>new uo(typeof e=="string"?e:e+"",void 0,js);var zs=(e,t)=>{if(po)e.adoptedStyleSheets=t.map(n=>n instanceof CSSStyleSheet?n:n.styleSheet);else for(let n of t){let o=document.createElement("style"),i=lo.litNonce;i!==void 0&&o.setAttribute("nonce",i),o.textContent=n.cssText,e.appendChild(o)}},Pi=po?e=>e:e=>e instanceof CSSStyleSheet?(t=>{let n="";for(let o of t.cssRules)n+=o.cssText;return Ns(n)})(e):e;var{is:Ic,defineProperty:Bc,getOwnPropertyDescriptor:Wc,getOwnPropertyNames:Cc,getOwnPropertySymbols:jc,getPrototypeOf:Nc}=Object,co=globalThis,Hs=co.trustedTypes,zc=Hs?Hs.emptyScript:"",Hc=co.reactiveElementPolyfillSupport,An=(e,t)=>e,Ai={toAttribute(e,t){switch(t){case Boolean:e=e?zc:null;break;case Object:case Array:e=e==null?e:JSON.stringify(e)}return e},fromAttribute(e,t){let n=e;switch(t){case Boolean:n=e!==null;break;case Number:n=e===null?null:Number(e);break;case Object:case Array:try{n=JSON.parse(e)}catch{n=null}}return n}},Js=(e,t)=>!Ic(e,t),Us={attribute:!0,type:String,converter:Ai,reflect:!1,useDefault:!1,hasChanged:Js};Symbol.metadata??=Symbol("metadata"),co.litPropertyMetadata??=new WeakMap;var Je=class extends HTMLElement{static addInitializer(t){this._$Ei(),(this.l??=[]).push(t)}static get observedAttributes(){return this.finalize(),this._$Eh&&[...this._$Eh.keys()]}static createProperty(t,n=Us){if(n.state&&(n.attribute=!1),this._$Ei(),this.prototype.hasOwnProperty(t)&&((n=Object.create(n)).wrapped=!0),this.elementProperties.set(t,n),!n.noAccessor){let o=Symbol(),i=this.getPropertyDescriptor(t,o,n);i!==void 0&&Bc(this.prototype,t,i)}}static getPropertyDescriptor(t,n,o){let{get:i,set:r}=Wc(this.prototype,t)??{get(){return this[n]},set(l){this[n]=l}};return{get:i,set(l){let p=i?.call(this);r?.call(this,l),this.requestUpdate(t,p,o)},configurable:!0,enumerable:!0}}static getPropertyOptions(t){return this.elementProperties.get(t)??Us}static _$Ei(){if(this.hasOwnProperty(An("elementProperties")))return;let t=Nc(this);t.finalize(),t.l!==void 0&&(this.l=[...t.l]),this.elementProperties=new Map(t.elementProperties)}static finalize(){if(this.hasOwnProperty(An("finalized")))return;if(this.finalized=!0,this._$Ei(),this.hasOwnProperty(An("properties"))){let n=this.properties,o=[...Cc(n),...jc(n)];for(let i of o)this.createProperty(i,n[i])}let t=this[Symbol.metadata];if(t!==null){let n=litPropertyMetadata.get(t);if(n!==void 0)for(let[o,i]of n)this.elementProperties.set(o,i)}this._$Eh=new Map;for(let[n,o]of this.elementProperties){let i=this._$Eu(n,o);i!==void 0&&this._$Eh.set(i,n)}this.elementStyles=this.finalizeStyles(this.styles)}static finalizeStyles(t){let n=[];if(Array.isArray(t)){let o=new Set(t.flat(1/0).reverse());for(let i of o)n.unshift(Pi(i))}else t!==void 0&&n.push(Pi(t));return n}static _$Eu(t,n){let o=n.attribute;return o===!1?void 0:typeof o=="string"?o:typeof t=="string"?t.toLowerCase():void 0}constructor(){super(),this._$Ep=void 0,this.isUpdatePending=!1,this.hasUpdated=!1,this._$Em=null,this._$Ev()}_$Ev(){this._$ES=new Promise(t=>this.enableUpdating=t),this._$AL=new Map,this._$E_(),this.requestUpdate(),this.constructor.l?.forEach(t=>t(this))}addController(t){(this._$EO??=new Set).add(t),this.renderRoot!==void 0&&this.isConnected&&t.hostConnected?.()}removeController(t){this._$EO?.delete(t)}_$E_(){let t=new Map,n=this.constructor.elementProperties;for(let o of n.keys())this.hasOwnProperty(o)&&(t.set(o,this[o]),delete this[o]);t.size>0&&(this._$Ep=t)}createRenderRoot(){let t=this.shadowRoot??this.attachShadow(this.constructor.shadowRootOptions);return zs(t,this.constructor.elementStyles),t}connectedCallback(){this.renderRoot??=this.createRenderRoot(),this.enableUpdating(!0),this._$EO?.forEach(t=>t.hostConnected?.())}enableUpdating(t){}disconnectedCallback(){this._$EO?.forEach(t=>t.hostDisconnected?.())}attributeChangedCallback(t,n,o){this._$AK(t,o)}_$ET(t,n){let o=this.constructor.elementProperties.get(t),i=this.constructor._$Eu(t,o);if(i!==void 0&&o.reflect===!0){let r=(o.converter?.toAttribute!==void 0?o.converter:Ai).toAttribute(n,o.type);this._$Em=t,r==null?this.removeAttribute(i):this.setAttribute(i,r),this._$Em=null}}_$AK(t,n){let o=this.constructor,i=o._$Eh.get(t);if(i!==void 0&&this._$Em!==i){let r=o.getPropertyOptions(i),l=typeof r.converter=="function"?{fromAttribute:r.converter}:r.converter?.fromAttribute!==void 0?r.converter:Ai;this._$Em=i;let p=l.fromAttribute(n,r.type);this[i]=p??this._$Ej?.get(i)??p,this._$Em=null}}requestUpdate(t,n,o,i=!1,r){if(t!==void 0){let l=this.constructor;if(i===!1&&(r=this[t]),o??=l.getPropertyOptions(t),!((o.hasChanged??Js)(r,n)||o.useDefault&&o.reflect&&r===this._$Ej?.get(t)&&!this.hasAttribute(l._$Eu(t,o))))return;this.C(t,n,o)}this.isUpdatePending===!1&&(this._$ES=this._$EP())}C(t,n,{useDefault:o,reflect:i,wrapped:r},l){o&&!(this._$Ej??=new Map).has(t)&&(this._$Ej.set(t,l??n??this[t]),r!==!0||l!==void 0)||(this._$AL.has(t)||(this.hasUpdated||o||(n=void 0),this._$AL.set(t,n)),i===!0&&this._$Em!==t&&(this._$Eq??=new Set).add(t))}async _$EP(){this.isUpdatePending=!0;try{await this._$ES}catch(n){Promise.reject(n)}let t=this.scheduleUpdate();return t!=null&&await t,!this.isUpdatePending}scheduleUpdate(){return this.performUpdate()}performUpdate(){if(!this.isUpdatePending)return;if(!this.hasUpdated){if(this.renderRoot??=this.createRenderRoot(),this._$Ep){for(let[i,r]of this._$Ep)this[i]=r;this._$Ep=void 0}let o=this.constructor.elementProperties;if(o.size>0)for(let[i,r]of o){let{wrapped:l}=r,p=this[i];l!==!0||this._$AL.has(i)||p===void 0||this.C(i,void 0,r,p)}}let t=!1,n=this._$AL;try{t=this.shouldUpdate(n),t?(this.willUpdate(n),this._$EO?.forEach(o=>o.hostUpdate?.()),this.update(n)):this._$EM()}catch(o){throw t=!1,this._$EM(),o}t&&this._$AE(n)}willUpdate(t){}_$AE(t){this._$EO?.forEach(n=>n.hostUpdated?.()),this.hasUpdated||(this.hasUpdated=!0,this.firstUpdated(t)),this.updated(t)}_$EM(){this._$AL=new Map,this.isUpdatePending=!1}get updateComplete(){return this.getUpdateComplete()}getUpdateComplete(){return this._$ES}shouldUpdate(t){return!0}update(t){this._$Eq&&=this._$Eq.forEach(n=>this._$ET(n,this[n])),this._$EM()}updated(t){}firstUpdated(t){}};Je.elementStyles=[],Je.shadowRootOptions={mode:"open"},Je[An("elementProperties")]=new Map,Je[An("finalized")]=new Map,Hc?.({ReactiveElement:Je}),(co.reactiveElementVersions??=[]).push("2.1.2");var Oi=globalThis,qs=e=>e,mo=Oi.trustedTypes,Ks=mo?mo.createPolicy("lit-html",{createHTML:e=>e}):void 0,Fi="$lit$",qe=`lit$${Math.random().toFixed(9).slice(2)}$`,Mi="?"+qe,Uc=`<${Mi}>`,Tt=document,On=()=>Tt.createComment(""),Fn=e=>e===null||typeof e!="object"&&typeof e!="function",Ei=Array.isArray,Xs=e=>Ei(e)||typeof e?.[Symbol.iterator]=="function",Di=`[ 	
\f\r]`,Dn=/<(?:(!--|\/[^a-zA-Z])|(\/?[a-zA-Z][^>\s]*)|(\/?$))/g,Vs=/-->/g,Gs=/>/g,kt=RegExp(`>|${Di}(?:([^\\s"'>=/]+)(${Di}*=${Di}*(?:[^ 	
\f\r"'\`<>=]|("|')|))|$)`,"g"),Ys=/'/g,Qs=/"/g,ea=/^(?:script|style|textarea|title)$/i,Li=e=>(t,...n)=>({_$litType$:e,strings:t,values:n}),s=Li(1),W=Li(2),E_=Li(3),ve=Symbol.for("lit-noChange"),u=Symbol.for("lit-nothing"),Zs=new WeakMap,xt=Tt.createTreeWalker(Tt,129);function ta(e,t){if(!Ei(e)||!e.hasOwnProperty("raw"))throw Error("invalid template strings array");return Ks!==void 0?Ks.createHTML(t):t}var na=(e,t)=>{let n=e.length-1,o=[],i,r=t===2?"<svg>":t===3?"<math>":"",l=Dn;for(let p=0;p<n;p++){let c=e[p],d,f,b=-1,S=0;for(;S<c.length&&(l.lastIndex=S,f=l.exec(c),f!==null);)S=l.lastIndex,l===Dn?f[1]==="!--"?l=Vs:f[1]!==void 0?l=Gs:f[2]!==void 0?(ea.test(f[2])&&(i=RegExp("</"+f[2],"g")),l=kt):f[3]!==void 0&&(l=kt):l===kt?f[0]===">"?(l=i??Dn,b=-1):f[1]===void 0?b=-2:(b=l.lastIndex-f[2].length,d=f[1],l=f[3]===void 0?kt:f[3]==='"'?Qs:Ys):l===Qs||l===Ys?l=kt:l===Vs||l===Gs?l=Dn:(l=kt,i=void 0);let A=l===kt&&e[p+1].startsWith("/>")?" ":"";r+=l===Dn?c+Uc:b>=0?(o.push(d),c.slice(0,b)+Fi+c.slice(b)+qe+A):c+qe+(b===-2?p:A)}return[ta(e,r+(e[n]||"<?>")+(t===2?"</svg>":t===3?"</math>":"")),o]},Mn=class e{constructor({strings:t,_$litType$:n},o){let i;this.parts=[];let r=0,l=0,p=t.length-1,c=this.parts,[d,f]=na(t,n);if(this.el=e.createElement(d,o),xt.currentNode=this.el.content,n===2||n===3){let b=this.el.content.firstChild;b.replaceWith(...b.childNodes)}for(;(i=xt.nextNode())!==null&&c.length<p;){if(i.nodeType===1){if(i.hasAttributes())for(let b of i.getAttributeNames())if(b.endsWith(Fi)){let S=f[l++],A=i.getAttribute(b).split(qe),F=/([.?@])?(.*)/.exec(S);c.push({type:1,index:r,name:F[2],strings:A,ctor:F[1]==="."?ho:F[1]==="?"?go:F[1]==="@"?_o:Rt}),i.removeAttribute(b)}else b.startsWith(qe)&&(c.push({type:6,index:r}),i.removeAttribute(b));if(ea.test(i.tagName)){let b=i.textContent.split(qe),S=b.length-1;if(S>0){i.textContent=mo?mo.emptyScript:"";for(let A=0;A<S;A++)i.append(b[A],On()),xt.nextNode(),c.push({type:2,index:++r});i.append(b[S],On())}}}else if(i.nodeType===8)if(i.data===Mi)c.push({type:2,index:r});else{let b=-1;for(;(b=i.data.indexOf(qe,b+1))!==-1;)c.push({type:7,index:r}),b+=qe.length-1}r++}}static createElement(t,n){let o=Tt.createElement("template");return o.innerHTML=t,o}};function St(e,t,n=e,o){if(t===ve)return t;let i=o!==void 0?n._$Co?.[o]:n._$Cl,r=Fn(t)?void 0:t._$litDirective$;return i?.constructor!==r&&(i?._$AO?.(!1),r===void 0?i=void 0:(i=new r(e),i._$AT(e,n,o)),o!==void 0?(n._$Co??=[])[o]=i:n._$Cl=i),i!==void 0&&(t=St(e,i._$AS(e,t.values),i,o)),t}var fo=class{constructor(t,n){this._$AV=[],this._$AN=void 0,this._$AD=t,this._$AM=n}get parentNode(){return this._$AM.parentNode}get _$AU(){return this._$AM._$AU}u(t){let{el:{content:n},parts:o}=this._$AD,i=(t?.creationScope??Tt).importNode(n,!0);xt.currentNode=i;let r=xt.nextNode(),l=0,p=0,c=o[0];for(;c!==void 0;){if(l===c.index){let d;c.type===2?d=new Ut(r,r.nextSibling,this,t):c.type===1?d=new c.ctor(r,c.name,c.strings,this,t):c.type===6&&(d=new $o(r,this,t)),this._$AV.push(d),c=o[++p]}l!==c?.index&&(r=xt.nextNode(),l++)}return xt.currentNode=Tt,i}p(t){let n=0;for(let o of this._$AV)o!==void 0&&(o.strings!==void 0?(o._$AI(t,o,n),n+=o.strings.length-2):o._$AI(t[n])),n++}},Ut=class e{get _$AU(){return this._$AM?._$AU??this._$Cv}constructor(t,n,o,i){this.type=2,this._$AH=u,this._$AN=void 0,this._$AA=t,this._$AB=n,this._$AM=o,this.options=i,this._$Cv=i?.isConnected??!0}get parentNode(){let t=this._$AA.parentNode,n=this._$AM;return n!==void 0&&t?.nodeType===11&&(t=n.parentNode),t}get startNode(){return this._$AA}get endNode(){return this._$AB}_$AI(t,n=this){t=St(this,t,n),Fn(t)?t===u||t==null||t===""?(this._$AH!==u&&this._$AR(),this._$AH=u):t!==this._$AH&&t!==ve&&this._(t):t._$litType$!==void 0?this.$(t):t.nodeType!==void 0?this.T(t):Xs(t)?this.k(t):this._(t)}O(t){return this._$AA.parentNode.insertBefore(t,this._$AB)}T(t){this._$AH!==t&&(this._$AR(),this._$AH=this.O(t))}_(t){this._$AH!==u&&Fn(this._$AH)?this._$AA.nextSibling.data=t:this.T(Tt.createTextNode(t)),this._$AH=t}$(t){let{values:n,_$litType$:o}=t,i=typeof o=="number"?this._$AC(t):(o.el===void 0&&(o.el=Mn.createElement(ta(o.h,o.h[0]),this.options)),o);if(this._$AH?._$AD===i)this._$AH.p(n);else{let r=new fo(i,this),l=r.u(this.options);r.p(n),this.T(l),this._$AH=r}}_$AC(t){let n=Zs.get(t.strings);return n===void 0&&Zs.set(t.strings,n=new Mn(t)),n}k(t){Ei(this._$AH)||(this._$AH=[],this._$AR());let n=this._$AH,o,i=0;for(let r of t)i===n.length?n.push(o=new e(this.O(On()),this.O(On()),this,this.options)):o=n[i],o._$AI(r),i++;i<n.length&&(this._$AR(o&&o._$AB.nextSibling,i),n.length=i)}_$AR(t=this._$AA.nextSibling,n){for(this._$AP?.(!1,!0,n);t!==this._$AB;){let o=qs(t).nextSibling;qs(t).remove(),t=o}}setConnected(t){this._$AM===void 0&&(this._$Cv=t,this._$AP?.(t))}},Rt=class{get tagName(){return this.element.tagName}get _$AU(){return this._$AM._$AU}constructor(t,n,o,i,r){this.type=1,this._$AH=u,this._$AN=void 0,this.element=t,this.name=n,this._$AM=i,this.options=r,o.length>2||o[0]!==""||o[1]!==""?(this._$AH=Array(o.length-1).fill(new String),this.strings=o):this._$AH=u}_$AI(t,n=this,o,i){let r=this.strings,l=!1;if(r===void 0)t=St(this,t,n,0),l=!Fn(t)||t!==this._$AH&&t!==ve,l&&(this._$AH=t);else{let p=t,c,d;for(t=r[0],c=0;c<r.length-1;c++)d=St(this,p[o+c],n,c),d===ve&&(d=this._$AH[c]),l||=!Fn(d)||d!==this._$AH[c],d===u?t=u:t!==u&&(t+=(d??"")+r[c+1]),this._$AH[c]=d}l&&!i&&this.j(t)}j(t){t===u?this.element.removeAttribute(this.name):this.element.setAttribute(this.name,t??"")}},ho=class extends Rt{constructor(){super(...arguments),this.type=3}j(t){this.element[this.name]=t===u?void 0:t}},go=class extends Rt{constructor(){super(...arguments),this.type=4}j(t){this.element.toggleAttribute(this.name,!!t&&t!==u)}},_o=class extends Rt{constructor(t,n,o,i,r){super(t,n,o,i,r),this.type=5}_$AI(t,n=this){if((t=St(this,t,n,0)??u)===ve)return;let o=this._$AH,i=t===u&&o!==u||t.capture!==o.capture||t.once!==o.once||t.passive!==o.passive,r=t!==u&&(o===u||i);i&&this.element.removeEventListener(this.name,this,o),r&&this.element.addEventListener(this.name,this,t),this._$AH=t}handleEvent(t){typeof this._$AH=="function"?this._$AH.call(this.options?.host??this.element,t):this._$AH.handleEvent(t)}},$o=class{constructor(t,n,o){this.element=t,this.type=6,this._$AN=void 0,this._$AM=n,this.options=o}get _$AU(){return this._$AM._$AU}_$AI(t){St(this,t)}},oa={M:Fi,P:qe,A:Mi,C:1,L:na,R:fo,D:Xs,V:St,I:Ut,H:Rt,N:go,U:_o,B:ho,F:$o},Jc=Oi.litHtmlPolyfillSupport;Jc?.(Mn,Ut),(Oi.litHtmlVersions??=[]).push("3.3.3");var Pt=(e,t,n)=>{let o=n?.renderBefore??t,i=o._$litPart$;if(i===void 0){let r=n?.renderBefore??null;o._$litPart$=i=new Ut(t.insertBefore(On(),r),r,void 0,n??{})}return i._$AI(e),i};var Ii=globalThis,Jt=class extends Je{constructor(){super(...arguments),this.renderOptions={host:this},this._$Do=void 0}createRenderRoot(){let t=super.createRenderRoot();return this.renderOptions.renderBefore??=t.firstChild,t}update(t){let n=this.render();this.hasUpdated||(this.renderOptions.isConnected=this.isConnected),super.update(t),this._$Do=Pt(n,this.renderRoot,this.renderOptions)}connectedCallback(){super.connectedCallback(),this._$Do?.setConnected(!0)}disconnectedCallback(){super.disconnectedCallback(),this._$Do?.setConnected(!1)}render(){return ve}};Jt._$litElement$=!0,Jt.finalized=!0,Ii.litElementHydrateSupport?.({LitElement:Jt});var qc=Ii.litElementPolyfillSupport;qc?.({LitElement:Jt});(Ii.litElementVersions??=[]).push("4.2.2");var ia=()=>{},Bi=!1;function ra(e){ia=e}function De(){Bi||(Bi=!0,queueMicrotask(()=>{Bi=!1,ia()}))}function sa(e){return e.split("/").slice(1).map(t=>t.replaceAll("~1","/").replaceAll("~0","~"))}function g(e,t){let n=e;for(let o of sa(t)){if(n===null||typeof n!="object")return;n=n[o]}return n}function U(e,t,n){return Wi(e,sa(t),n)}function Wi(e,t,n){let[o,...i]=t;if(o===void 0)return n;if(Array.isArray(e)){let p=[...e],c=Wi(p[Number(o)],i,n);return c===void 0?p.splice(Number(o),1):p[Number(o)]=c,p}let r={...e??{}},l=Wi(r[o],i,n);return l===void 0?delete r[o]:r[o]=l,r}var aa={};function Ke(e,t){(aa[e]??=[]).push(t)}function it(e,t){for(let n of aa[e]??[])n(t)}var la=()=>/^#([0-9a-f]{48})$/.exec(location.hash)?.[1],bo="";function ua(e){bo=e,sessionStorage.setItem("key",e)}ua(la()??sessionStorage.getItem("key")??"");function pa(e){addEventListener("hashchange",()=>{let t=la();!t||t===bo||(ua(t),e())})}var ca={status:0,body:new Blob};async function Kc(e,t,n){try{let o=await fetch(t,{method:e,body:n,headers:{"X-Bench-Key":bo}});return{status:o.status,body:await o.blob()}}catch{return ca}}function Vc(e,t,n,o){return new Promise(i=>{let r=new XMLHttpRequest;r.open(e,t),r.setRequestHeader("X-Bench-Key",bo),r.responseType="blob",r.upload.onprogress=l=>o(l.total?l.loaded/l.total:0),r.onerror=()=>i(ca),r.onload=()=>i({status:r.status,body:r.response}),r.send(n)})}var ma={send:(e,t,n,o)=>n!==void 0&&o?Vc(e,t,n,o):Kc(e,t,n)};var Gc=ma,ke=({problem:e,remedy:t})=>[e,t].filter(Boolean).join("; "),y=class extends Error{constructor(n,o,i={}){super(o.line);this.status=n;this.complaint=o;this.answer=i}status;complaint;answer;get may_pass(){return this.status===0||this.status===503}},Yc={file:"",field:"",problem:"the program does not answer",remedy:"start brimwright again and open the address it prints; what you typed is kept here",line:"The program does not answer: start brimwright again and open the address it prints. What you typed is kept here."},da="what you typed is kept here";function Qc(e){let[t,n]=e===503?["the program has too much to do at once",`it is asked again in a moment; ${da}`]:["a fault of brimwright itself",`${da}: change something, or ask again`];return{file:"",field:"",problem:t,remedy:n,line:`${t} (answer ${e}); ${n}.`}}function fa(e,t){if(e===0)return new y(0,Yc);let n=Qc(e),o={...n,...t.complaint};return e>=500&&Object.assign(o,{is_fault:!0,remedy:o.remedy||n.remedy}),new y(e,o,t)}async function Zc(e,t){try{return fa(e,JSON.parse(await t.text()))}catch{return fa(e,{})}}async function ha(...e){let{status:t,body:n}=await Gc.send(...e);if(t>=200&&t<300)return n;throw await Zc(t,n)}var qt=async(...e)=>JSON.parse(await(await ha(...e)).text()),En=(e,t)=>qt("POST",e,JSON.stringify(t)),Kt=()=>qt("GET","/api/files"),xe=e=>qt("GET",`/api/run?file=${encodeURIComponent(e)}`),wo=e=>qt("PUT","/api/run",JSON.stringify(e));async function ga(e,t){let n=`/api/changed?file=${encodeURIComponent(e)}&version=${t??""}&wait=0`;return(await qt("GET",n)).version}var _a=e=>En("/api/plan",e),rt=e=>En("/api/gauge",e),Ci=e=>En("/api/list",{what:e}),$a=async()=>(await Ci("fats")).fats,ba=async()=>(await Ci("moulds")).moulds,wa=async()=>(await Ci("tips")).tips,Vt=e=>ha("POST","/api/document",JSON.stringify(e)),ya=async e=>(await En("/api/document",{...e,open:!0})).address,va=(e,t)=>qt("POST",`/api/mesh?name=${encodeURIComponent(e.name)}`,e,t),ka=async(e,t)=>(await En("/api/keep",{upload:e,as:t})).file;var ce=["pour","pipe","apart"];var me=e=>`${JSON.stringify(e,null,2)}
`;function ie(e){try{let t=JSON.parse(e??"");return t!==null&&typeof t=="object"&&!Array.isArray(t)?t:void 0}catch{return}}var Ln=e=>e.slice(0,e.lastIndexOf("/")+1),In=e=>e.slice(e.lastIndexOf("/")+1),xa=(e,t)=>{let n=Ln(e);return n?Xc(n+t):t};function Xc(e){let t=[];for(let n of e.split("/"))n===".."?t.pop():n!=="."&&t.push(n);return t.join("/")}function st(e,t){return(e.toLowerCase().replaceAll(/[^a-z0-9]+/g,"_").replace(/^_+|_+$/g,"").slice(0,60)||"mine")+t}function Gt(e,t){let[,n,o]=/^(.*?)((?:\.(?:run|formula))?\.\w+)$/.exec(e)??["",e,""];for(let i=1;;++i){let r=i===1?e:`${n}_${i}${o}`;if(!t.some(l=>l.file===r))return r}}var em=["mould","formula","file","fats_from","tips_from"];function ji(e,t=""){return e===null||typeof e!="object"?[]:Object.entries(e).flatMap(([n,o])=>{let i=`${t}/${n}`;return typeof o!="string"?ji(o,i):em.includes(n)?[i]:[]})}function Ni(e,t){let[n,o]=[e,t];for(let i of["/$schema",...ji(e)])[n,o]=[U(n,i,void 0),U(o,i,void 0)];return JSON.stringify(n)===JSON.stringify(o)}function Ta(e,t){let n=ji(e).filter(o=>g(e,o)!==g(t,o));return o=>n.reduce((i,r)=>g(i,r)===g(e,r)?U(i,r,g(t,r)):i,o)}var C=(e,t)=>({name:e,label:t,unit:"mm"}),at=C("height","Floor to brim"),yo={name:"draft",label:"Lean of the wall",unit:"\xB0",optional:!0},zi={block:{words:"Box, loaf or slab",measures:[C("length","Longer side at the brim"),C("width","Shorter side"),at,yo,{...C("corner_radius","Corner radius"),optional:!0}]},frustum:{words:"Round cup",measures:[C("floor_diameter","Across the floor"),C("brim_diameter","Across the brim"),at]},fluted_cup:{words:"Fluted cup",measures:[C("floor_diameter","Across the floor"),C("brim_diameter","Across the brim"),at,{name:"flutes",label:"Flutes",unit:"",count:!0},C("flute_depth","Depth of a flute")]},polygon:{words:"Equal sides",measures:[{name:"sides",label:"Sides",unit:"",count:!0},C("across_flats","Across the flats"),at,yo]},dome:{words:"Bowl",measures:[C("diameter","Across the brim"),at]},half_ball:{words:"Half ball",measures:[C("diameter","Across the brim")]},ball:{words:"Ball",measures:[C("diameter","Across")]},half_ring:{words:"Half ring",measures:[C("centre_diameter","Ring, middle to middle of the tube"),C("tube_diameter","Across the tube")]},turned_ring:{words:"Ring with a post",measures:[C("outer_floor_diameter","Cup, across the floor"),C("outer_brim_diameter","Cup, across the brim"),C("post_floor_diameter","Post, at its foot"),C("post_brim_diameter","Post, at its top"),at]},turned_profile:{words:"Round, by its wall from the side",measures:[],points:{columns:[C("height","Height"),C("radius","Middle to wall")],least:2,words:"From the lowest point up to the brim: how high, and from the middle line out to the wall, half the width there. A round floor begins with 0 from the middle; a flat one with half its width."}},outline:{words:"Any outline, straight up",measures:[at,yo],points:{columns:[C("x","From the left"),C("y","From below")],least:3,words:"The corners of the brim, one after the other as one walks round it. Draw a rectangle round the brim and measure from its left side and from its lower side."}},heart:{words:"Heart",measures:[C("side","Straight edge, tip to round"),at,yo]}},Sa=Object.fromEntries(Object.entries(zi).map(([e,{words:t}])=>[e,t])),Yt=e=>zi[e]?.measures??[],lt=e=>zi[e]?.points;var Hi=(e,t)=>String(g(e,t)??"").trim(),Bn=e=>Hi(e,"/shape/kind"),Oe=(e,t)=>g(e,`/${t}`)!==void 0,Ui=e=>["body","skin"].includes(Hi(e,"/mesh/role"));function fe(e,t){let n=g(e,t);return Array.isArray(n)?n:[]}function Ra(e,t){return(lt(Bn(e))?.columns??[]).map(({name:o})=>String(g(t,`/${o}`)??"").trim())}function Qt(e){return fe(e,"/shape/points").flatMap((t,n)=>Ra(e,t).every(Boolean)?[n]:[])}function vo(e){let t=n=>n.some(Boolean)&&!n.every(Boolean);return fe(e,"/shape/points").flatMap((n,o)=>t(Ra(e,n))?[o]:[])}var Ji=e=>fe(e,"/water/weighings").flatMap((t,n)=>String(t).trim()?[n]:[]);function Pa(e){let t=e,n=(o,i)=>{if(!Array.isArray(g(t,o)))return;let r=i.map(l=>g(e,`${o}/${l}`));t=U(t,o,r)};return lt(Bn(e))&&n("/shape/points",Qt(e)),n("/water/weighings",Ji(e)),t}function Aa(e,t){let[,n,o,i]=/^(\/shape\/points|\/water\/weighings)\/(\d+)(.*)$/.exec(t)??[];if(!n)return t;let r=n==="/shape/points"?Qt(e):Ji(e);return`${n}/${r[Number(o)]??o}${i}`}function Wn(e){let t=[],n=i=>Hi(e,i)!=="",o=(i,r)=>{i||t.push(r)};if(Oe(e,"shape")){let i=Bn(e);o(i!=="","the shape");for(let{name:l,label:p,optional:c}of Yt(i))o(c||n(`/shape/${l}`),p.toLowerCase());let r=lt(i);r&&o(Qt(e).length>=r.least,`${r.least} points at least`)}if(Oe(e,"water")){o(n("/water/temperature"),"the water's temperature"),o(g(e,"/water/to")!==void 0,"how far the water was filled");for(let i of["depth","below_brim"])o(g(e,`/water/to/${i}`)===void 0||n(`/water/to/${i}`),"the water's line");o(n("/water/of"),"what was weighed"),o(Ji(e).length>0,"a weighing of water")}return!Ui(e)&&!Oe(e,"mesh")&&o(n("/cavities"),"how many cavities one mould has"),t}var Cn={name:"run",list:"runs",new_name:({shipped:e,file:t,now:n})=>e?In(t):st(String(n.name),".run.json"),written:e=>e,is_begun:()=>!0},ko={name:"formula",list:"formulas",new_name:({shipped:e,file:t,now:n})=>e?In(t):st(String(n.name),".formula.json"),written:e=>e,is_begun:()=>!0},Ve={name:"mould",list:"moulds",new_name:({now:e})=>st(String(e.name),".json"),written:e=>({...Pa(e),name:String(e.name??"").trim()}),is_begun:e=>Oe(e,"shape")||Oe(e,"mesh")};var Ce={view:"reading",formula_of:"pour",fats:[],catalogue:[],own_tips:{},own_fats:{},own_moulds:{},run:{kind:Cn,id:"",file:"",version:null,shipped:!1,now:{},saved:void 0,unanswered:[]},formulas:{},past:[],future:[],batch:0,is_old:!1,dangers:{run:[],apart:[]},start_complaint:"",new_formula:{name:"",copied:""},printing:{paper:localStorage.getItem("paper")==="Letter"?"Letter":"A4",batch:0,is_working:!1,told:""},open:new Set,folded:new Set,units:tm(),announcement:""},a=Ce;function tm(){let e=localStorage.getItem("units");return e==="metric"||e==="us"?e:"both"}function h(e){Object.assign(Ce,e),De()}var je=e=>h({announcement:e});function v(e,t){Object.assign(e,t),De()}function Ge(e,t){let{[e]:n,...o}=Ce.formulas;h({formulas:t?{...o,[e]:t}:o})}function Zt(e,t){let n=new Set(Ce[e]);n.delete(t)||n.add(t),h({[e]:n})}function qi(e){Ce.open.has(e)||h({open:new Set(Ce.open).add(e)})}function xo(e,t,{name:n,note:o}={}){if(!Ce.files)return;let i={file:t,name:String(n??""),note:String(o??""),shipped:!1},r=Ce.files[e].filter(p=>p.file!==t),l=Ce.files[e].findIndex(p=>p.file===t);r.splice(l<0?r.length:l,0,i),h({files:{...Ce.files,[e]:r}})}async function Xt({kind:e,name:t,text:n,from:o,about_to:i,is_own:r}){for(;;){let{runs:l=[],formulas:p=[],moulds:c=[]}=a.files??{},d=Gt(t,[...l,...p,...c]);i?.(d);let f=await nm(d,n,o);if(xo(e.list,d,ie(f.there.text)??{name:d}),f.is_new||r?.(f.there))return f.there}}async function nm(e,t,n){try{return{is_new:!0,there:await wo({file:e,version:null,text:t,from:n})}}catch(o){if(!(o instanceof y)||o.status!==409)throw o;return{is_new:!1,there:o.answer}}}var To=e=>`unsaved ${e.name} ${a.files?.folder??""} `;function At({kind:e,id:t,file:n,version:o,shipped:i,now:r},l){if(e.is_begun(r))try{let p={id:t,file:n,version:o,shipped:i,text:me(r),copy:l};localStorage.setItem(To(e)+t,JSON.stringify(p))}catch{}}function Ki(e,t){try{return JSON.parse(localStorage.getItem(To(e)+t)??"null")??void 0}catch{return}}var Dt=(e,t)=>localStorage.removeItem(To(e)+t);function Da(e){let t=To(e);return Object.keys(localStorage).flatMap(o=>o.startsWith(t)?[o.slice(t.length)]:[]).sort().flatMap(o=>Ki(e,o)??[])}var om=300,K=e=>e.now!==e.saved;function Gi(e,t,n=crypto.randomUUID()){return{kind:e,id:n,file:"",version:null,shipped:!1,now:t,saved:void 0,unanswered:[]}}async function ut(e,t,n=t){let o=await xe(t),i=JSON.parse(o.text),r=Ki(e,n),l=r?.copy&&o.shipped?await im(e,r,i):void 0;if(l)return Dt(e,n),ut(e,l);let{version:p,shipped:c=!1}=o,d={kind:e,id:n,file:t,version:p,shipped:c,now:i,saved:i,unanswered:[]};return r&&rm(d,r,o),d}async function im(e,t,n){if(!a.files?.[e.list].some(r=>r.file===t.copy))return;let o=ie(t.text),i=ie((await xe(t.copy)).text);if(!(!o||!i||me(o)===me(n)))return Ni(e.written(o),i)?t.copy:void 0}function rm(e,t,n){let o=ie(t.text);if(!o||me(o)===me(e.now))return Dt(e.kind,e.id);v(e,{now:o}),!(t.version===n.version||n.shipped)&&(v(e,{version:t.version}),Ca(e,n))}function Ne(e,t){let n=e.now;v(e,{now:t,failed:void 0}),At(e),it("edited",{file:e,before:n})}var Fa=new WeakMap,Vi=async e=>Fa.get(e),jn=e=>Ea(e,()=>sm(e)),Ma=e=>Ea(e,()=>e.shipped?La(e,Ia):Promise.resolve());function Ea(e,t){let n=Vi(e).then(t);return Fa.set(e,n.catch(()=>{})),n}async function sm(e){!K(e)||e.theirs||await La(e,e.shipped||!e.file?Ia:Ba)}async function La(e,t){v(e,{failed:void 0});try{await t(e)}catch(n){throw n instanceof y&&v(e,{failed:ke(n.complaint)}),n}}async function Ia(e){let{kind:t,id:n,now:o}=e,i=e.shipped?e.file:void 0,r=t.written(o),l=await Xt({kind:t,name:t.new_name(e),text:me(r),from:i,about_to:f=>At(e,f),is_own:({text:f})=>i!==void 0&&Ni(r,ie(f)??{})}),p=JSON.parse(l.text),c=Ta(r,p),d=e.now===o?p:c(e.now);Dt(t,n),v(e,{id:l.file,file:l.file,version:l.version,shipped:!1,now:d,saved:p}),K(e)&&At(e),i!==void 0&&it("copied",{file:e,from:i,renamed:c})}async function Ba(e){let{version:t,now:n}=e,o=me(e.kind.written(n));v(e,{unanswered:[...new Set(e.unanswered).add(o)]});try{Yi(e,n,(await wo({file:e.file,version:t,text:o})).version)}catch(i){if(!(i instanceof y)||i.status!==409)throw i;Wa(e,i.answer),K(e)&&!e.theirs&&await Ba(e)}}function Yi(e,t,n){v(e,{saved:t,version:n,theirs:void 0,failed:void 0,unanswered:[]}),K(e)?At(e):Dt(e.kind,e.id),xo(e.kind.list,e.file,t)}function Wa(e,{version:t,text:n}){if(n===me(e.kind.written(e.now)))return Yi(e,e.now,t);let o=n!==null&&e.unanswered.includes(n);v(e,{unanswered:[]}),o?v(e,{version:t,saved:void 0,theirs:void 0}):Ca(e,{version:t,text:n})}function Ca(e,{version:t,text:n}){v(e,{theirs:{version:t,text:n}}),At(e),je(`${e.file} has changed underneath. Say which is to stay.`),it("conflict",{file:e})}function ja(e){if(!e.theirs)return;let t=ie(e.theirs.text);if(!t){let n=`what is in ${e.file} now is no ${e.kind.name}; keep what is on this page`;return v(e,{failed:n})}it("giving_way",{file:e}),v(e,{set_aside:e.now,now:t}),Yi(e,t,e.theirs.version),it("gave_way",{file:e})}function Na(e){e.theirs&&(v(e,{version:e.theirs.version,saved:void 0,theirs:void 0,failed:void 0}),At(e),it("unwritten",{file:e}))}function za(e){if(!e.set_aside)return;let{set_aside:t,now:n}=e;Ne(e,t),v(e,{set_aside:n})}var Oa=e=>(e.theirs??e).version;async function Qi(e,t,n){if(e.shipped||!e.file)return!1;let[o,i]=[e.file,Oa(e)],r=()=>Oa(e)===i&&e.file===o;if(await t(o,i)===i||(await Vi(e),!r()))return!1;n(),await Zi();let l=await am(o,t);return await Vi(e),r()&&(Wa(e,l),K(e)&&!e.theirs&&it("unwritten",{file:e})),!0}async function am(e,t){let n=await t(e,null);return n===null?{version:n,text:null}:xe(e)}var Zi=()=>new Promise(e=>setTimeout(e,om));var lm=300,um=1200,So="",Ha=0;function Nn(){let e={run:{file:a.run,now:a.run.now}};for(let t of ce){let n=a.formulas[t];n&&(e[t]={file:n,now:n.now})}return e}function Xi(e=""){let t=performance.now();e&&e===So&&t-Ha<=um&&a.past.length||er(Nn()),h({future:[]}),So=e,Ha=t}var er=e=>h({past:[...a.past,e].slice(-lm)});function Ro(e){er(Ua(Nn(),e,()=>e.saved??{}))}function Ua(e,t,n){let o=Object.entries(e).map(([i,r])=>r.file===t?[i,{file:t,now:n(r.now)}]:[i,r]);return Object.fromEntries(o)}function tr(e,t){let n=o=>o.map(i=>Ua(i,e,t));h({past:n(a.past),future:n(a.future)})}function en(){let e=a.past.at(-1);e&&(h({past:a.past.slice(0,-1),future:[...a.future,Nn()]}),Ja(e,"Undone"))}function Po(){let e=a.future.at(-1);e&&(h({past:[...a.past,Nn()],future:a.future.slice(0,-1)}),Ja(e,"Done again"))}function Ja(e,t){So="",h({typed:void 0});for(let n of[...ce,"run"])pm(n,e);je(t)}function pm(e,t){let n=t[e],o=e==="run"?n?.file===a.run:a.formulas[e]!==void 0;!n||!o||(e!=="run"&&Ge(e,n.file),n.file.now!==n.now&&Ne(n.file,n.now))}var cm=e=>e===a.run||ce.some(t=>a.formulas[t]===e);Ke("giving_way",({file:e})=>{cm(e)&&(So="",er(Nn()),h({typed:void 0}))});Ke("copied",({file:e,renamed:t})=>tr(e,t));var zn=e=>xa(a.run.file,e);function pt(e,t){let n=zn(e);return t?.some(o=>o.file===n)?n:e}async function Ot(){for(let e of["pour","pipe"]){let t=g(a.run.now,`/${e}/formula`);typeof t=="string"&&t?await mm(e,pt(t,a.files?.formulas)):Ge(e,void 0)}}async function mm(e,t){if(a.formulas[e]?.file===t)return;let n=ce.map(o=>a.formulas[o]).find(o=>o?.file===t);if(Ge(e,n),!n)try{Ge(e,await nr(t))}catch(o){if(!(o instanceof y||o instanceof SyntaxError))throw o}}async function nr(e){let t=await ut(ko,e);return K(t)&&Ro(t),t}function Ao(e){let t=new DataView(e).getUint32(12,!0),n=JSON.parse(new TextDecoder().decode(new Uint8Array(e,20,t))),o=r=>20+t+8+(n.bufferViews[n.accessors[r].bufferView].byteOffset??0),i=r=>n.accessors[r].count;return n.meshes.map(({name:r,primitives:[{attributes:l,indices:p,material:c}]})=>({name:r,positions:new Float32Array(e,o(l.POSITION),i(l.POSITION)*3),indices:new Uint32Array(e,o(p),i(p)),colour:n.materials[c].pbrMetallicRoughness.baseColorFactor}))}function Ka(e,t,n="upright"){let[o,i,r]=n==="upright"?[1,2,1]:[2,1,-1],l=[],{positions:p,indices:c}=e;for(let d=0;d<c.length;d+=3){let f=[];for(let b=0;b<3;++b){let S=3*c[d+b],A=3*c[d+(b+1)%3],F=p[S+i]-t,ye=p[A+i]-t;if(F>0==ye>0)continue;let Bs=F/(F-ye),Ws=[1e3*(p[S]+Bs*(p[A]-p[S])),1e3*r*(p[S+o]+Bs*(p[A+o]-p[S+o]))];F>0?f.push(Ws):f.unshift(Ws)}f.length===2&&l.push([f[0],f[1]])}return l}function Va(e){let t=([i,r])=>`${i.toFixed(3)} ${r.toFixed(3)}`,n=new Map;for(let i of e){let r=t(i[0]);n.set(r,[...n.get(r)??[],i])}let o=[];for(let i of e){let r=[],l=n.get(t(i[0]))?.shift();for(;l;)r.push(l[0]),l=n.get(t(l[1]))?.shift();r.length>2&&o.push(r)}return o}function or(e){let t=e.positions,[n,o,i,r,l,p]=[1/0,-1/0,1/0,-1/0,1/0,-1/0];for(let d=0;d<t.length;d+=3)i=Math.min(i,t[d]),r=Math.max(r,t[d]),l=Math.min(l,t[d+1]),p=Math.max(p,t[d+1]),n=Math.min(n,t[d+2]),o=Math.max(o,t[d+2]);let c=n+(o-n)*.50137;return{loops:Va(Ka(e,c)),left:1e3*i,right:1e3*r,floor:1e3*l,brim:1e3*p,cut_y:-1e3*c}}function Ga(e,t){let[n,o]=[t.floor/1e3,(t.brim-t.floor)/1e3];return[.999,.50137].map(r=>Va(Ka(e,n+r*o,"level"))).reduce((r,l)=>qa(l)>1.001*qa(r)?l:r)}function qa(e){let[t,n]=[1/0,-1/0];for(let o of e)for(let[i]of o)[t,n]=[Math.min(t,i),Math.max(n,i)];return Math.max(0,n-t)}function ir(e,t){let[n,o]=[1/0,-1/0];for(let i of e.loops)i.forEach(([r,l],p)=>{let[c,d]=i[(p+1)%i.length];if(!(Math.min(l,d)>t||Math.max(l,d)<t))for(let f of l===d?[r,c]:[r+(t-l)/(d-l)*(c-r)])n=Math.min(n,f),o=Math.max(o,f)});return n<=o?[n,o]:[e.left,e.right]}var Ya=40,dm=2e3,rr=0;async function Qa(e){let t=await Vt({kind:"glb",gauge:e}),n=Ao(await t.arrayBuffer());return n.find(o=>o.name==="cavity")??n[0]}async function tn(e){let[t,n]=await Promise.all([rt(e),Qa(e)]),o=or(n);return{gauge:t,outline:o,above:Ga(n,o)}}async function fm(e){let{pockets:t}=await rt(e),n=t[0].brim_mm-t[0].floor_mm-.001,o=Array.from({length:Ya},(i,r)=>`${(n*(r+1)/Ya).toFixed(4)} mm`);return rt({...e,depth:o})}function ze(){hm()}async function hm(){let e=g(a.run.now,"/pour/mould");if(typeof e!="string")return;let t=++rr,n=pt(e,a.files?.moulds);try{let[o,i]=await Promise.all([fm({file:n}),Qa({file:n})]);t===rr&&h({measured:{mould:n,gauge:o,outline:or(i)},measuring_failed:void 0})}catch(o){if(t!==rr)return;if(!(o instanceof y))throw o;h({measured:void 0,measuring_failed:o.message}),o.may_pass&&window.setTimeout(ze,dm)}}var gm=30,Za=0,sr=!1,ar=!1;function lr(e,t,n){let o=t==="mesh"?a.mesh:void 0;h({mould:{way:t,title:n,open:e,is_old:!1,shapes:{}},mesh:o,typed:void 0}),pr()}var Ft=()=>h({mould:void 0,mesh:void 0}),nn=(e,t,n)=>lr(Gi(Ve,e),t,n);async function Xa(e,t){let n=await ut(Ve,e,t?crypto.randomUUID():e),o=String(n.now.name??e);t&&v(n,{now:{...n.now,name:""}}),lr(n,"form",t?`A copy of ${o}`:`Change ${o}`)}async function el({id:e,file:t,text:n}){let o=t?await ut(Ve,t,e):Gi(Ve,JSON.parse(n),e);lr(o,"form",String(o.now.name??"").trim()||"A mould of your own")}var M=()=>a.mould,R=()=>M().open.now,G=(e,t)=>Ne(M().open,U(R(),e,t)),_m=["name","note","owned","unmould_after"];function ur(e){let t=R(),n=Object.keys({...e,...t}).filter(l=>e?.[l]!==t[l]);(!e||n.some(l=>!_m.includes(l)))&&v(M(),{is_old:!0});let i=n.some(l=>M().complaint?.field===`/${l}`),r=n.some(l=>!["name","note"].includes(l));(M().is_old||i||r)&&pr()}function pr(){clearTimeout(Za),Za=window.setTimeout(()=>{$m()},gm)}async function $m(){if(sr)return void(ar=!0);let{mould:e}=a;if(!e)return;let t=e.open.now;if(!(!Oe(t,"shape")&&!Oe(t,"mesh"))){if(Wn(t).length)return v(e,{complaint:void 0});sr=!0;try{let n=Ve.written(t),o={file:e.open.file||"new.mould.json",mould:{...n,name:n.name||"New mould"}},i=await tn(o);e.open.now===t&&v(e,{answer:i,is_old:!1,complaint:void 0})}catch(n){if(!(n instanceof y))throw n;e.open.now===t&&cr(n)}finally{sr=!1,ar&&pr(),ar=!1}}}function cr(e){let{field:t,problem:n,remedy:o}=e.complaint,i=t?`${n}; ${o}`:e.message;v(M(),{complaint:{field:Aa(R(),t),line:i}})}var tl=e=>[...new Set(e.flatMap(t=>a.formulas[t]??[]))],nl=e=>e.filter(t=>t.theirs),Ye=e=>nl(tl(e==="apart"?["apart"]:["pour","pipe"]))[0],Do=()=>nl([a.run,...tl(ce)]);var Hn=()=>a.formulas.apart?"apart":"run",ol=e=>h({dangers:{...a.dangers,[Hn()]:e}});function il(e){let t=e.cautions.filter(n=>n.severity==="danger");ol(t.map(({text:n,topic:o})=>({text:n,is_of_heat:o==="heat"})))}function rl(e){bm(e)&&ol([{text:ke(e),is_of_heat:!1}])}var bm=({problem:e})=>/lye[- ]heavy|superfat\b[^;]*?(\s[-−]\d|below (zero|0))/i.test(e);var wm=400,ym=2e3,Oo=0;function Un(){clearTimeout(Oo),Oo=window.setTimeout(()=>{Fe()},wm)}async function Fe(){clearTimeout(Oo);let{run:e}=a;try{await jn(e),K(e)&&!e.theirs&&e===a.run&&Un()}catch(t){if(!(t instanceof y))throw t;t.may_pass&&(Oo=window.setTimeout(()=>{Fe()},ym))}}var sl=Promise.resolve();function on(){let e=sl.then(vm);return sl=e.catch(()=>{}),e}async function vm(){for(let e of ce){let t=a.formulas[e];!t||!K(t)||t.theirs||(t.shipped&&e!=="apart"&&await Ma(a.run),await jn(t))}}function al(e){let t=a.run.now,n=t.pour,o=t.losses,i=n?.moulds_owned===void 0?{}:{moulds_owned:n.moulds_owned},r=pt(String(n?.mould??""),a.files?.moulds);return{file:Gt("trial.run.json",a.files?.runs??[]),run:{schema:"brimwright.run/1",name:String(t.name??""),sell:t.sell??"",spoilage:t.spoilage??"",pour:{mould:r,...i,formula:e,line:n?.line??{}},losses:{pour:o?.pour??{}},scales:t.scales??{},...km(t)}}}function km(e){let t={};for(let n of["cut","pots","batch"])e[n]!==void 0&&(t[n]=e[n]);if(t.batch){let{whippings:n,...o}=t.batch;t.batch=o}return t}var Qe=new Map,Fo=new Set,Jn=()=>new Set(ce.flatMap(e=>a.formulas[e]??[]));async function ll(){let e=xm(),t=new Set([...Jn()].map(({file:n})=>n));for(let n of Qe.keys())!e.has(n)&&!t.has(n)&&Qe.delete(n);for(let n of Fo)e.has(n)||Fo.delete(n);for(let n of e)Qe.has(n)||Qe.set(n,await qn(n))}async function qn(e,t=null){if(Fo.has(e))return null;try{return await ga(e,t)}catch(n){if(!(n instanceof y)||n.status!==422)throw n;return Fo.add(e),null}}function xm(){let e=new Set,t=o=>{typeof o!="string"||!o||(e.add(zn(o)),o.includes("..")||e.add(o))},n=a.run.now;t(g(n,"/pour/mould")),t(g(n,"/pipe/beads/tips_from"));for(let o of Array.isArray(n.perch)?n.perch:[])t(g(o,"/mould"));for(let o of["pour","pipe"])a.formulas[o]||t(g(n,`/${o}/formula`));for(let{file:o,now:i}of Jn()){let r=i.fats_from;typeof r=="string"&&r&&e.add(Ln(o)+r).add(r)}return e}async function ul(){let e=Tm();for(let[t,n]of Qe){let o=await qn(t,n);Qe.get(t)!==n||o===n||(e.push(t),Qe.set(t,o))}return e}function Tm(){return[...Jn()].flatMap(({file:e,version:t})=>{let n=Qe.get(e)??t;return Qe.delete(e),n===t?[]:[e]})}var pl=0,mr=()=>pl;function dr(e){++pl,h({is_old:!0,changed_beside:e})}var Sm=1e3,Rm=450,Mo=!1,Mt=!1,fr=0;function ee(){h({is_old:!0}),Mo?Mt=!0:rn()}async function rn(){if(Mo){Mt=!0;return}Mo=!0,cl(!1);try{do Mt=!1,await Pm();while(Mt)}finally{Mo=!1,cl(!0),De()}}var cl=e=>{document.documentElement.dataset.settled=String(e)};function ml(){let{run:e}=a,{apart:t}=a.formulas,{file:n,now:o}=e;return()=>{let i=e===a.run&&(n===e.file||o===e.now);return t===a.formulas.apart&&(t!==void 0||i)}}async function Pm(){let e=ml();try{await on(),await ll(),e=ml();let{apart:t}=a.formulas;if(Ye(t?"apart":"run"))return h({is_old:!0});let n=mr(),o=await _a(t?al(t.file):{file:a.run.file,run:a.run.now});if(window.clearTimeout(fr),!e())return void(Mt=!0);h({plan:o,complaint:void 0}),il(o);let i=n===mr();h({is_old:Mt||!i}),i&&h({changed_beside:void 0})}catch(t){if(!(t instanceof y))throw t;if(!e())return void(Mt=!0);Am(t)}}function Am(e){h({is_old:!0}),window.clearTimeout(fr);let t=()=>{h({complaint:e.complaint}),rl(e.complaint)};a.complaint||!a.plan?t():fr=window.setTimeout(t,Rm),e.may_pass&&window.setTimeout(ee,Sm)}var Eo=e=>Object.values(a.formulas).includes(e),dl=e=>`${String(g(e,"/pour/formula"))}
${String(g(e,"/pipe/formula"))}`;function Dm(e,t){g(e,"/pour/mould")!==g(t,"/pour/mould")&&ze(),dl(e)!==dl(t)&&Ot(),ee(),Un()}var Om=ee;function Fm(e,t){for(let n of["pour","pipe"]){if(a.formulas[n]!==e)continue;let o=`/${n}/formula`,i=r=>String(g(r,o)??"").endsWith(In(t))?U(r,o,e.file):r;tr(a.run,i),i(a.run.now)!==a.run.now&&Ne(a.run,i(a.run.now))}}function fl(){Ke("edited",({file:e,before:t})=>{e===a.run?Dm(t,e.now):Eo(e)?Om():e===a.mould?.open&&ur(t)}),Ke("gave_way",({file:e})=>{if(e===a.mould?.open)return ur();e===a.run&&(ze(),Ot().then(ee)),ee()}),Ke("unwritten",({file:e})=>{e===a.run?Fe():Eo(e)&&ee()}),Ke("conflict",({file:e})=>{Eo(e)&&h({is_old:!0})}),Ke("copied",({file:e,from:t})=>{Eo(e)&&Fm(e,t),e===a.run&&(localStorage.setItem("run",e.file),ee())})}var Kn=()=>h({own_fats:{}});function sn(e){let t=hr(e);return Array.isArray(t)?[...t,...a.fats]:a.fats}function hr(e){let t=a.formulas[e],n=g(t?.now,"/fats_from");if(typeof n!="string"||!n.endsWith(".json")||t===void 0)return;let o=`${t.file}
${n}`,i=a.own_fats[o];return i||(hl(o,"waiting"),Mm(n,t.file).then(r=>hl(o,r)),"waiting")}var hl=(e,t)=>h({own_fats:{...a.own_fats,[e]:t}});async function Mm(e,t){for(let n of new Set([Ln(t)+e,e])){let o=await Em(n);if(Array.isArray(o?.fats))return o.fats.map(Lm)}return"none"}async function Em(e){try{return ie((await xe(e)).text)}catch{return}}var Lm=({id:e,name:t,saponification_value:n})=>({id:String(e??""),name:String(t??e??""),own:Im(n)});function Im(e){if(e===null||typeof e!="object")return String(e??"");let{low:t,high:n}=e;return`${String(t)} to ${String(n)}`}var an=[],Vn;function Lo(){an.length=0;for(let{file:e,shipped:t}of a.files?.moulds??[])t||an.push(e);Vn===void 0&&_l()}function gl(e){let t=a.own_moulds[e];return!t&&e!==Vn&&!an.includes(e)&&an.push(e),Vn===void 0&&an.length&&_l(),t}async function _l(){for(;(Vn=an.shift())!==void 0;){let e=Vn,t=await Bm(e);h({own_moulds:{...a.own_moulds,[e]:t}})}}async function Bm(e){try{let{pockets:t}=await rt({file:e});return{brimful_ml:t[0].brimful_ml,cavities:t.length}}catch(t){if(!(t instanceof y))throw t;let{field:n,problem:o,remedy:i}=t.complaint;return{complaint:[n&&`${n.slice(1).replaceAll("/",", ")} `,o,i&&`; ${i}`].join("")}}}var bl=()=>h({own_tips:{}}),gr=!1;function wl(){return!a.tips&&!gr&&(gr=!0,wa().then(e=>h({tips:e}),vl).finally(()=>gr=!1)),a.tips??[]}function yl(e){let t=zn(e),n=a.own_tips[t];return n||!e||a.typed?n??[]:($l(t,[]),xe(t).then(({text:o})=>$l(t,Wm(o)),vl),[])}var $l=(e,t)=>h({own_tips:{...a.own_tips,[e]:t}});function Wm(e){let t=ie(e)?.tips;return(Array.isArray(t)?t:[]).map(n=>({name:String(n.name)}))}function vl(e){if(!(e instanceof y))throw e}var kl=700,xl=!1;function Tl(){if(xl)return;xl=!0;let e=()=>{$r().then(()=>window.setTimeout(e,kl),()=>window.setTimeout(e,3*kl))};e()}var _r;function $r(){return _r??=Cm().finally(()=>_r=void 0),_r}async function Cm(){for(let t of[a.run,a.mould?.open])t&&await Qi(t,qn,()=>{});if(!a.run.file)return;for(let t of Jn())await jm(t);let[e]=await ul();e!==void 0&&await Nm(e)}async function jm(e){await Qi(e,qn,()=>dr(e.file))&&(Kn(),ee())}async function Nm(e){dr(e),await Zi(),Kn(),bl(),h({measured:void 0}),ze(),Lo(),await Ot(),ee()}var Sl="examples/spring_order.run.json";async function Rl(){let e=await Kt();h({files:e});try{await ln(zm(e))}catch(o){let i=o instanceof y?o.message:`The run opened last is no run any more: ${String(o)}`;h({fault:i,view:"start"}),localStorage.removeItem("run")}let[t,n]=await Promise.all([$a(),ba()]);h({fats:t,catalogue:n})}function zm(e){let t=localStorage.getItem("run"),n=i=>e.runs.some(r=>r.file===i);return e.open?e.open:t&&n(t)?t:e.runs.find(i=>!i.shipped)?.file??(n(Sl)?Sl:e.runs[0]?.file??"")}async function ln(e){if(!e)return h({view:"start"});a.run.file&&K(a.run)&&await Fe();let t=await ut(Cn,e);h({view:"run",run:t,formulas:{},past:[],future:[],dangers:{run:[],apart:[]},changed_beside:void 0,fault:void 0,plan:void 0,batch:0,complaint:void 0,typed:void 0,measured:void 0}),localStorage.setItem("run",t.file),K(t)&&(Ro(t),Un());let n=rn();ze(),await Promise.all([n,Ot()]),Tl()}async function Pl(e){let t=a.run.now,n=t.losses??{},o={schema:"brimwright.run/1",name:e.name,note:`Losses, scales and spoilage were taken over from "${String(t.name)}": check them.`,sell:e.cavities,spoilage:t.spoilage??"0 %",pour:{mould:e.mould,formula:e.formula,line:{below_brim:e.deep_mm>15?"5 mm":"0 mm"}},losses:{pour:n.pour??{}},scales:t.scales??{}};t.money&&(o.money=t.money);let{file:i}=await Xt({kind:Cn,name:st(e.name,".run.json"),text:me(o)});await ln(i)}var br=s`<span aria-hidden="true">⚠</span> Danger`;function Gn(e,t="",n){let o=Et(e,n);return o.length?s`<div class="dangers" id=${t||u}>
    ${o.map(i=>s`<p class="danger"><strong>${br}</strong> ${i}</p>`)}
  </div>`:u}function Et(e,t){let n=a.dangers[e==="apart"?"apart":"run"].filter(l=>!l.is_of_heat).map(l=>l.text).filter(l=>t===void 0||Hm(l,t));if(e==="apart")return n;let o=l=>String(a.formulas[l]?.now.name??""),[i,r]=[o(e),o(e==="pour"?"pipe":"pour")];return n.filter(l=>!r||!l.includes(r)||i!==""&&l.includes(i))}function Hm(e,t){let n=/\bBatches of (\d+) pieces?: /.exec(e);return!n||Number(n[1])===t}function Al(){let e=a.view==="start"||Hn()==="apart",t=a.dangers.run.map(({text:n})=>({from:e?`In the run "${String(a.run.now.name??a.run.file)}": `:"",text:n}));return[...a.dangers.apart.map(({text:n})=>({from:"",text:n})),...t]}var wr=()=>Al().length>0;function Dl(){let e=Al(),t=qm();return!e.length&&!t?u:s`<section class="foremost" aria-label="Danger, and figures from before">
    ${e.length?s`<div role="alert" class="dangers">
            ${e.map(({from:n,text:o})=>s`<p class="danger"><strong>${br}</strong> ${n}${o}</p>`)}
          </div>`:u}
    ${t?s`<div class="stale">
            <p role="status"><strong>Figures from before.</strong> ${t}</p>
            ${Um()?s`<button type="button" @click=${Jm}>To the question</button>`:u}
          </div>`:u}
  </section>`}var Um=()=>Ye(Hn())!==void 0&&a.view!=="start";function Jm(){let e=document.querySelector(".banner h2");e&&(e.tabIndex=-1,e.focus({preventScroll:!0}),e.scrollIntoView({block:"start"}))}function qm(){if(!a.run.file||a.view==="reading")return"";let e=Ye(Hn());return e?`${e.file} changed underneath: what is struck through is of neither text. Say which is to stay.`:a.is_old&&a.changed_beside?`${a.changed_beside} changed underneath: what is struck through is not to be weighed.`:""}var yr=e=>e==="run"?a.run:a.formulas[e],vr=e=>yr(e)?.now,_=(e,t)=>g(vr(e),t),E=(e,t)=>String(_(e,t)??"");function ct(e,t){let n=_(e,t);return Array.isArray(n)?n:[]}function q(e,t,n){let o=_(e,t)??{};return Object.fromEntries(Object.entries(o).filter(([i])=>!n.includes(i)))}function Z(e,t,n){let o=yr(e);!o||g(o.now,t)===n||(Xi(`${e} ${t}`),Ne(o,U(o.now,t,n)))}function Ol(e,t){let n=yr(e);n&&(Xi(),h({typed:void 0}),Ne(n,t(n.now)))}var Km="examples/plain_bars.run.json";function un(e){Kn(),h({view:"formula",formula_of:e,picking:void 0,typed:void 0}),window.scrollTo(0,0),requestAnimationFrame(()=>document.querySelector("#formula-title")?.focus({preventScroll:!0}))}async function kr(e){let t=["pour","pipe"].find(n=>a.run.file&&a.formulas[n]?.file===e);if(t)return un(t);a.run.file||await ln(Km),await Vm(e)}async function Vm(e){let t={past:a.past,future:a.future};h({run_steps:t,past:[],future:[]});try{Ge("apart",await nr(e))}catch(n){throw h({...t,run_steps:void 0}),n}h({plan:void 0,complaint:void 0}),un("apart"),rn()}async function Yn(){let e=a.formulas.apart!==void 0;return e&&!await Gm()?!1:(h({view:"run",typed:void 0}),e&&await rn(),window.scrollTo(0,0),!0)}async function Gm(){try{await on()}catch(t){if(!(t instanceof y))throw t;return h({complaint:t.complaint}),!1}if(a.formulas.apart?.theirs)return je("Say first which text of the formula is to stay."),window.scrollTo(0,0),!1;Ge("apart",void 0);let e={...a.dangers,apart:[]};return h({dangers:e,...a.run_steps,run_steps:void 0,plan:void 0,complaint:void 0}),!0}async function xr(e){let{file:t}=a.formulas.apart;await Yn()&&Z("run",`/${e}/formula`,t)}var Ym=e=>({schema:"brimwright.formula/1",name:e,fats:[],superfat:"",alkali:[],water:{},pour_temperature:""}),Fl=e=>El(Ym(e));async function Ml(e,t){let{$schema:n,...o}=JSON.parse((await xe(e)).text);await El({...o,name:t},e)}async function El(e,t){let n=st(String(e.name),".formula.json"),{file:o}=await Xt({kind:ko,name:n,text:me(e),from:t});await kr(o)}function Tr(e){return Math.min(a.batch,e.batches.length-1)}function Io(e){let{pieces:t,batches:n,batch_limits:o,around:i,...r}=e,l=n[Tr(e)],{pour:p,pipe:c,dust:d,lye_pot:f,bottles:b}=l;return{...r,pour:p,pipe:c,dust:d,lye_pot:f,bottles:b,batch:l,whippings:c?.whippings??[],whole:e}}var te=(e,t,n=`${t}s`)=>`${e} ${e===1?t:n}`,Qm=e=>e.cut?["loaf","loaves"]:["cast","casts"];function de(e,{pieces:t,casts:n}){let o=e.cut?te(t,"bar"):te(t,"piece");return n===t?o:`${o} from ${te(n,...Qm(e))}`}var Ze=e=>e===1?"once":`${e} times`,pn=e=>e.batches.length>1,X=e=>e.pieces.batches>1;function Sr(e){return e.length<2?e.join(""):`${e.slice(0,-1).join(", ")} and ${e.at(-1)}`}function Ll(e,{count:t,numbers:n}){return X(e)?pn(e)?`made ${Ze(t)}: ${t===1?"batch":"batches"} ${Sr(n.map(String))} of ${e.pieces.batches}`:`made ${Ze(t)}`:""}function he(e){return X(e.whole)?`one batch, ${de(e.whole,e.batch)}`:""}var Il=({whippings:e})=>e.length>1||(e[0]?.count??0)>1;function Lt(e,t){return Il(e)?`one whipping: ${de(e.whole,t)}${t.count>1?`, whipped ${Ze(t.count)}`:""}`:""}var Bl=({whippings:e})=>e.flatMap(t=>Array.from({length:t.count},()=>t)),Bo=e=>X(e.whole)||Il(e),Wo=(e,t)=>`${te(e,"filling")} of ${te(t,"cavity","cavities")}`;var jo=28.349523125,Nl=25.4,Zm=29.5735295625;function Te(e,t){return e.toFixed(t).replace(/^-(0(\.0*)?)$/,"$1")}function $(e,t){return Xm(Te(e,t))}var Xm=e=>e.replace(/(\.\d*?)0+$/,"$1").replace(/\.$/,"");function Me(e){let t=[1,2,3].find(n=>Number(e.toFixed(n))!==0);return t!==void 0?`${Te(e,t)} %`:Rr(e)?"just below 0 %":"0.0 %"}var Rr=e=>e<0||Object.is(e,-0),zl=e=>Math.abs(e-Math.round(e))<1e-6;function Wl(e){return e?[0,1,2,3].find(t=>zl(e*10**t))??3:0}function Cl(e){return Math.max(0,Math.ceil(-Math.log10(e)-1e-9))}function ed(e){return[0,1,2].find(t=>e.every(n=>zl(n*10**t)))??3}function No(e,t,n){return e==="metric"?[t,""]:e==="us"?[n,""]:[t,n]}function re(e,t){let n=r=>e[`${t}${r}`],o=n("scale_step_g"),i=n("g");return{g:i,scale_step_g:o??10**-ed([i]),g_text:n("g_text"),oz_text:n("oz_text"),reads:n("reads")}}var Hl=.001;function Co(e,t,n,o,i=1e-9){let r=10**n;return Te(o==="nearest"?e/t:Math.floor((e+i)/t*r)/r,n)}var jl=[1,.5,.2,.1,.05,.02,.01,.005,.002,.001];function Ul(e){if(!jl.some(t=>Math.abs(t*10-e)<1e-9||Math.abs(t-e)<1e-9))return jl.find(t=>Math.abs(t*jo-e)<.6*Hl)}function j(e,t,n="nearest"){let o=t.scale_step_g||.1,i=Ul(o),r=Math.min(.6*Hl,o/2),l=i?Co(t.g,1,Cl(o),n):Co(t.g,1,Wl(o),n,r),p=i?Co(t.g,jo,Wl(i),n,r):Co(t.g,jo,Cl(o/jo),n),[c,d]=[`${t.g_text??l} g`,`${t.oz_text??p} oz`];return(t.reads?t.reads==="oz":i!==void 0)&&e==="both"?[d,c]:No(e,c,d)}function Jl(e){let t=Ul(e);return t?`${t} oz`:`${$(e,3)} g`}var O=(e,t,n=1,o="nearest")=>j(e,{g:t,scale_step_g:10**-n},o);function ne(e,t,n=1){return No(e,`${Te(t,n)} ml`,`${Te(t/Zm,2)} fl oz`)}function se(e,t){return No(e,`${$(t,1)} mm`,td(t))}function td(e){let t=Math.round(Math.abs(e)/Nl*16),n=e<0&&t?"-":"",o=t%16,i=16;for(;o&&o%2===0;)o/=2,i/=2;let r=Math.floor(t/16),l=o?`${o}/${i}`:"";return`${n}${[r||!o?String(r):"",l].filter(Boolean).join(" ")} in`}var It=([e])=>e,T=([e,t])=>t?`${e} (${t})`:e;function ql(e,t){return No(e,`${Te(t,0)} \xB0C`,`${Te(t*1.8+32,0)} \xB0F`)}function cn(e){let t=/^\s*(?:(\d+)\s+)?(\d+(?:[.,]\d+)?)(?:\/(\d+))?\s*(mm|cm|m|in|inch|inches|")\s*$/.exec(String(e??""));if(!t)return;let n=Number(t[1]??0)+Number(t[2].replace(",","."))/Number(t[3]??1),o={mm:1,cm:10,m:1e3}[t[4]]??Nl;return n*o}function mn(e){return/^[+-]?[\d.,/\s½¼¾]+?\s*([^\d\s.,/].*)$/.exec(String(e??""))?.[1]?.trim()??""}var zo=e=>/^\s*[+-]?\d[\d.,/\s]*$/.test(e);function mt(e){let t=Math.round(e/60);return e>=60&&e%60===0&&t<90?`${t} min`:e<90?`${Math.round(e)} s`:t<90?`${t} min`:`${Math.floor(t/60)} h ${t%60} min`}var Kl=e=>e.goes_into==="lye",dn=({role:e})=>e==="alkali",nd=e=>dn(e)?"down":"nearest",Se=(e,t)=>j(e,t,nd(t)),Ho=e=>It(Se("metric",e));function fn(e){let t=e.ingredients.map((i,r)=>({one:i,i:r})).filter(({one:i})=>Kl(i)),n=({one:i})=>i.role==="water",o=({one:i})=>dn(i);return[...t.filter(n),...t.filter(i=>!n(i)&&!o(i)),...t.filter(o)]}function Uo(e){return e.ingredients.map((t,n)=>({one:t,i:n})).filter(({one:t})=>!Kl(t))}function hn(e,t=()=>{}){if(!e.theirs)return u;let n=e.theirs.text===null,o=`conflict-${e.file.replaceAll(/[^\w]/g,"-")}`,i=()=>{Na(e),t()};return s`<section class="banner" aria-labelledby=${o}>
    <h2 id=${o}>${e.file} has ${n?"been taken away":"changed"} underneath</h2>
    <p>Another hand or tab wrote the file. Nothing typed here was written over it. Which is to stay?</p>
    ${e.failed?s`<p class="complaint" role="status">Not taken: ${e.failed}.</p>`:u}
    <div class="choice">
      ${n?u:s`<button type="button" @click=${()=>ja(e)}>Take what is in the file</button>`}
      <button type="button" @click=${i}>Keep what is on this page</button>
    </div>
  </section>`}function Vl(e){return e.theirs||!e.set_aside?u:s`<section class="banner" aria-label="What you typed">
    <p>This is what another hand wrote. What you typed is still here.</p>
    <button type="button" @click=${()=>za(e)}>Change to the other text</button>
  </section>`}var Bt={ATTRIBUTE:1,CHILD:2,PROPERTY:3,BOOLEAN_ATTRIBUTE:4,EVENT:5,ELEMENT:6},Gl=e=>(...t)=>({_$litDirective$:e,values:t}),Jo=class{constructor(t){}get _$AU(){return this._$AM._$AU}_$AT(t,n,o){this._$Ct=t,this._$AM=n,this._$Ci=o}_$AS(t,n){return this.update(t,n)}update(t,n){return this.render(...n)}};var{I:_y}=oa;var Yl=e=>e.strings===void 0;var od={},Ql=(e,t=od)=>e._$AH=t;var ae=Gl(class extends Jo{constructor(e){if(super(e),e.type!==Bt.PROPERTY&&e.type!==Bt.ATTRIBUTE&&e.type!==Bt.BOOLEAN_ATTRIBUTE)throw Error("The `live` directive is not allowed on child or event bindings");if(!Yl(e))throw Error("`live` bindings can only contain a single expression")}render(e){return e}update(e,[t]){if(t===ve||t===u)return t;let n=e.element,o=e.name;if(e.type===Bt.PROPERTY){if(t===n[o])return ve}else if(e.type===Bt.BOOLEAN_ATTRIBUTE){if(!!t===n.hasAttribute(o))return ve}else if(e.type===Bt.ATTRIBUTE&&n.getAttribute(o)===t+"")return ve;return Ql(e),t}});var Y=(e,t)=>`f-${e}${t.replaceAll(/[^\w]/g,"-")}`;function Pr(e,t){return g(vr(e),t)}function He(e,t){let n=a.complaint;if(!(!n||n.field!==t&&!n.field.startsWith(`${t}/`)))return gn(e)?ke(n):void 0}function le(e,t){return a.complaint?.field===t?He(e,t):void 0}function gn(e){let t=a.complaint,n=e==="run"?a.run.file:a.formulas[e]?.file;return!t||n===void 0?!1:t.file===""||t.file===n||t.file.endsWith(`/${n}`)}function id(e,t){let n=t.slice(0,t.lastIndexOf("/"));return Object.keys(Pr(e,n)??{}).length>1?t:n}function dt(){let e=a.complaint;if(e)for(let t of["run",...ce])for(let n=e.field;n;n=n.slice(0,n.lastIndexOf("/"))){let o=He(t,n)&&document.getElementById(Y(t,n));if(o)return o}}function rd(e,t){let n=e.of??"run";if(e.optional&&t.trim()==="")return;if(e.number)return/^\s*\d+([.,]\d+)?\s*$/.test(t)?Number(t.trim().replace(",",".")):t;if(e.count)return/^\s*\d{1,9}\s*$/.test(t)?Number(t):t;let o=sd(e,n);return o&&zo(t)?`${t.trim()} ${o}`:t}function sd(e,t){return mn(Pr(t,e.at))||e.unit||""}var ge=(e,t,n)=>t||n?s`<p id="${e}-said" class=${t?"complaint":"hint"}>${t??n}</p>`:u,Ar=!1;addEventListener("pointerdown",()=>Ar=!0,!0);for(let e of["pointerup","pointercancel"])addEventListener(e,()=>Ar=!1,!0);var Zl=()=>h({typed:void 0});function Dr(){Ar?addEventListener("pointerup",()=>setTimeout(Zl),{once:!0}):Zl()}function m(e){let t=e.of??"run",n=Y(t,e.at),o=Pr(t,e.at),i=a.typed?.key===n?a.typed.text:o===void 0?"":String(o),r=He(t,e.at),l=d=>{let f=d.target.value;h({typed:{key:n,text:f}});let b=rd(e,f);Z(t,b===void 0&&e.takes_part?id(t,e.at):e.at,b)},c=(a.typed?.key===n&&typeof o=="string"&&o!==i?`taken as ${o}`:"")||e.hint;return s`<div
    class="field ${e.wide?"wide":""} ${e.short?"short":""} ${r?"wants":""}"
  >
    <label for=${n}>${e.label}</label>
    <input
      id=${n}
      .value=${ae(i)}
      @input=${l}
      @blur=${Dr}
      autocomplete="off"
      spellcheck="false"
      inputmode=${e.count?"numeric":e.number?"decimal":"text"}
      aria-invalid=${r?"true":"false"}
      aria-describedby=${[r||c?`${n}-said`:"",e.described_by??""].filter(Boolean).join(" ")||u}
    />
    ${ge(n,r,c)}
  </div>`}function Or(e){for(let t=e?.closest("details");t;t=t.parentElement?.closest("details"))t.open=!0;e?.focus()}var Re=e=>()=>document.getElementById(e),ht=(e,t)=>Re(Y(e,t)),Wt=e=>()=>document.querySelector(`#${e} :is(input, select, button[aria-pressed])`),ad=()=>document.activeElement;function qo(e){requestAnimationFrame(()=>Or(e()))}function _n(e,t,n,o=ad){je(t),Ol(e,n),qo(o)}function Q(e,t,n,o,i){_n(e,t,r=>U(r,n,o),i)}var ft=(e,t,n)=>`${Y(e,t)}-${n}`;function L(e,t){let n=le(e,t);return n?s`<p id=${Y(e,t)} class="complaint" tabindex="-1">${n}</p>`:u}var Xl=(e,t,n)=>t.map(([o,i])=>s`<button type="button" aria-pressed=${o===e?"true":"false"} @click=${()=>n(o)}>
        ${i}
      </button>`);function ue(e,t,n,o){return s`<div class="choice" role="group" aria-label=${e}>${Xl(t,n,o)}</div>`}function w({of:e="run",question:t,at:n,asked_at:o=n,is_told_elsewhere:i,chosen:r,answers:l,puts:p,then:c,hint:d}){let f=i?ft(e,n,t.replaceAll(/\W+/g,"-")):Y(e,o),b=i?void 0:le(e,o),S=A=>{if(A===r)return;let F=l.find(([ye])=>ye===A)[1];Q(e,`${t}: ${F}`,n,p(A),c&&ht(e,c(A)))};return s`<div class="field asked ${b?"wants":""}">
    <p class="question" id="${f}-label">${t}</p>
    <div
      class="choice"
      role="group"
      id=${f}
      tabindex="-1"
      aria-labelledby="${f}-label"
      aria-describedby=${b||d?`${f}-said`:u}
    >
      ${Xl(r,l,S)}
    </div>
    ${ge(f,b,d)}
  </div>`}function Fr(e,t,n,o){let i=Y("run",e),r=le("run",e),l=()=>Q("run",`${t}: ${n?"no":"yes"}`,e,n?void 0:o);return s`<div class="choice">
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
    ${ge(i,r)}`}function Ee({label:e,of:t="run",at:n,answers:o,unsaid:i,optional:r,chosen:l,take:p}){let c=Y(t,n),d=He(t,n),f=l??E(t,n),b=!f||o.some(([F])=>F===f),S=[["",i],...b?[]:[[f,f]],...o];return s`<div class="field choose ${d?"wants":""}">
    <label for=${c}>${e}</label>
    <select
      id=${c}
      @change=${F=>{let ye=F.target.value;p?p(ye):Z(t,n,ye||!r?ye:void 0)}}
      aria-invalid=${d?"true":"false"}
      aria-describedby=${d?`${c}-said`:u}
    >
      ${S.filter(([F])=>F||r||!f).map(([F,ye])=>s`<option value=${F} .selected=${ae(F===f)}>${ye}</option>`)}</select
    >${ge(c,d)}
  </div>`}function Xe(e,t,n=[]){let o=pt(E("run",t),n);return Ee({label:e,at:t,chosen:o,answers:n.map(i=>[i.file,i.name||i.file]),unsaid:"choose ..."})}function _e({of:e="run",at:t,name:n,title:o,add:i,blank:r,body:l}){let p=ft(e,t,"part"),c=ft(e,t,"add");return _(e,t)===void 0?s`<p class="choice">
      <button type="button" id=${c} @click=${()=>Q(e,`${o} added`,t,r,Wt(p))}>
        ${i}
      </button>
    </p>`:s`<div class="part" id=${p} role="group" aria-label=${o}>
    <div class="part-head">
      <p class="part-title">${o}</p>
      <button
        type="button"
        aria-label="Take away ${n}"
        @click=${()=>Q(e,`${o} taken away`,t,void 0,Re(c))}
      >
        Take away
      </button>
    </div>
    ${L(e,t)} ${l()}
  </div>`}var eu=(e,t)=>`folded ${e} ${t}`,tu=(e,t)=>qi(eu(e,t));function P({of:e="run",name:t,pointers:n,summary:o,is_needed:i,body:r}){let l=eu(e,t);(i||n.some(d=>He(e,d)))&&qi(l);let p=a.open.has(l);return s`<details .open=${p}>
    <summary @click=${d=>{d.preventDefault(),Zt("open",l)}}>${o}</summary>
    ${p?s`<div class="folded">${r()}</div>`:u}
  </details>`}var x=({of:e="run",at:t})=>ct(e,t),I=({of:e="run",at:t},n)=>ft(e,`${t}/${n}`,"item"),Ko=({of:e="run",at:t},n,o)=>ft(e,`${t}/${n}`,o),ld=({of:e="run",at:t})=>Y(e,t);function Qn(e,t,n,o){let{of:i="run",at:r,stays:l,and:p=c=>c}=e;_n(i,t,c=>p(U(c,r,n.length||l?n:void 0),n.length),o)}function N(e,t,n){let o=x(e);Qn(e,`${n} added`,[...o,t],Wt(I(e,o.length)))}function ud(e,t,n){let o=x(e).filter((l,p)=>p!==t),i=Math.min(t,o.length-1),r=o.length>(e.least??0);Qn(e,`${n} taken away`,o,r?Re(Ko(e,i,"drop")):ht(e.of??"run",e.at))}function pd(e,t,n,o){let i=[...x(e)],[r]=i.splice(t,1);i.splice(t+n,0,r);let l=n<0?"earlier":"later",c=t+n===0||t+n===i.length-1?n<0?"later":"earlier":l;Qn(e,`${o} moved ${l}`,i,Re(Ko(e,t+n,c)))}function J(e,t,n){let o=x(e).length-1,i=o>=(e.least??0),r=e.in_order&&o>0;if(!i&&!r)return u;let l=(p,c,d)=>s`<button
      type="button"
      id=${Ko(e,t,c)}
      ?disabled=${d}
      aria-label="${n} ${c}"
      @click=${()=>pd(e,t,p,n)}
    >
      ${p<0?"\u2191":"\u2193"}
    </button>`;return s`<div class="tools">
    ${r?s`${l(-1,"earlier",t===0)} ${l(1,"later",t===o)}`:u}
    ${i?s`<button
            type="button"
            id=${Ko(e,t,"drop")}
            aria-label="Take away ${n}"
            @click=${()=>ud(e,t,n)}
          >
            ×
          </button>`:u}
  </div>`}function z(e,t,n){let o=ld(e),i=le(e.of??"run",e.at);return s`${ge(o,i)}
    <button type="button" id=${o} aria-describedby=${i?`${o}-said`:u} @click=${n}>
      ${t}
    </button>`}function nu(e){let t=E(e,"/measured_density");return s`<section class="card" aria-labelledby="pouring-title">
    <h2 id="pouring-title">Pouring and curing</h2>
    <div class="row">
      ${m({label:"Temperature at the pour",of:e,at:"/pour_temperature",hint:"The batter's, with its unit: 38 \xB0C, 100 \xB0F."})}
      ${m({label:"Cure",of:e,at:"/cure",unit:"days",optional:!0,hint:"Such as 35 days."})}
    </div>
    ${fd(e)}
    ${P({of:e,name:"density",pointers:["/measured_density"],summary:`Density measured${t&&`: ${t}`}`,body:()=>m({label:"Of the plain, unwhipped batter, by weigh-cup",of:e,at:"/measured_density",unit:"g/ml",optional:!0,hint:"Taken in place of the computed one, and compared with it."})})}
  </section>`}var cd=[["unsaid","Not said"],["share","As a share"],["law","As a course in time"],["weighed","From my weighings"]],ou={after:"",mass:""},iu=3,md={unsaid:{},share:{water_lost_in_cure:""},law:{drying:{finally_lost:"",time_constant:""}},weighed:{drying:{weighings:Array.from({length:iu},()=>ou)}}};function dd(e){return _(e,"/drying/weighings")!==void 0?"weighed":_(e,"/drying")!==void 0?"law":_(e,"/water_lost_in_cure")===void 0?"unsaid":"share"}function fd(e){let t=dd(e);return s`${w({of:e,question:"Water that leaves in the cure",at:"",asked_at:"/drying",chosen:t,answers:cd,puts:o=>({...q(e,"",["drying","water_lost_in_cure"]),...md[o]})})}
  ${t==="share"?s`<div class="row">
          ${m({label:"Of the batter's water, gone when it is sold",of:e,at:"/water_lost_in_cure",unit:"%"})}
        </div>`:u}
  ${t==="law"?s`<div class="row">
          ${m({label:"Of the batter's water, gone in the end",of:e,at:"/drying/finally_lost",unit:"%"})}
          ${m({label:"After this, 63 % of that is gone",of:e,at:"/drying/time_constant",unit:"days"})}
        </div>`:u}
  ${t==="weighed"?hd(e):u}`}function hd(e){let t={of:e,at:"/drying/weighings",least:iu};return s`<p class="hint">Of one plain piece, or of the same few together, in order of time.</p>
    ${x(t).map((n,o)=>s`<div class="row named" id=${I(t,o)}>
          ${m({label:"Time since the pour",of:e,at:`${t.at}/${o}/after`,unit:"days",short:!0})}
          ${m({label:"Mass",of:e,at:`${t.at}/${o}/mass`,unit:"g",short:!0})}
          ${J(t,o,`weighing ${o+1}`)}
        </div>`)}
    ${z(t,"One more weighing",()=>N(t,ou,"weighing"))}`}var gd=["citric acid, anhydrous","citric acid monohydrate","lactic acid (100 %)","acetic acid (100 %)","ascorbic acid","malic acid","tartaric acid","potassium hydrogen tartrate","oxalic acid, anhydrous","oxalic acid dihydrate","glycolic acid (100 %)","salicylic acid","benzoic acid","phosphoric acid (100 %)","vinegar, 5 g acetic acid per 100 g","lactic acid 88 % (of which part is lactate ester, titrated as total acid)","sodium bicarbonate","potassium bicarbonate"],Vo=e=>sn(e).map(t=>[t.id,t.name]),ru=["unsaid","Not said"],su=["none","Holds none"],au=e=>e===void 0?"unsaid":e==="none"?"none":"some",_d=e=>t=>t==="some"?e:t==="none"?"none":void 0;function lu(e,t){return Mr(e,`${t}/contains_fat`,[ru,su,["some","Holds fat"]],Vo(e))}function Mr(e,t,n,o){let i=au(_(e,t)),r=n.some(([l])=>l===i)?i:void 0;return s`${w({of:e,question:"Fat in it",at:t,chosen:r,answers:n,puts:_d({fat:"",share:""})})}
  ${i==="some"?s`<div class="row">
          ${Ee({label:"Which fat",of:e,at:`${t}/fat`,answers:o,unsaid:"choose ..."})}
          ${m({label:"Fat in what is weighed",of:e,at:`${t}/share`,unit:"%",short:!0})}
        </div>`:u}`}var $d=[ru,su,["some","Holds acid"],["typed","By what it takes up"]],bd={unsaid:void 0,none:"none",some:{acid:"",share:""},typed:{takes_up:""}};function Er(e,t){let n=`${t}/acid`,o=_(e,`${n}/takes_up`)!==void 0?"typed":au(_(e,n));return s`${w({of:e,question:"Acid in it",at:n,chosen:o,answers:$d,puts:i=>bd[i]})}
  ${o==="some"?s`<div class="row">
          ${Ee({label:"Which acid",of:e,at:`${n}/acid`,answers:gd.map(i=>[i,i]),unsaid:"choose ..."})}
          ${m({label:"Of that acid in what is weighed",of:e,at:`${n}/share`,unit:"%",short:!0})}
        </div>`:u}
  ${o==="typed"?s`<div class="row">
          ${m({label:"Taken up by 1 g of it",of:e,at:`${n}/takes_up`,unit:"mg KOH/g",hint:"From its supplier's document."})}
        </div>`:u}
  ${o==="some"||o==="typed"?Lr(e,`${n}/confirmed`,"An essence or concentrate, stronger than a juice, vinegar, wine or sour milk"):u}`}function Lr(e,t,n){let o=_(e,t)===!0?"yes":"no";return w({of:e,question:n,at:t,chosen:o,answers:[["no","No"],["yes","Yes"]],puts:i=>i==="yes"?!0:void 0})}var wd=["tsp/lb","tbsp/lb","tsp/kg"],Go=["%","g/kg",...wd].flatMap(e=>[`${e} of fats`,`${e} of batter`]),pu=[...Go,"% of finished soap","g/kg of finished soap"];function uu(e,t){let n=e.trim().replaceAll(/\s+/g," "),o=[...t].sort((i,r)=>r.length-i.length).find(i=>n.endsWith(i))??"";return[o?n.slice(0,-o.length).trim():e,o]}function Yo(e,t,n,o,i=!1){let r=Y(e,t),[l,p]=uu(E(e,t),o),c=a.typed?.key===r?a.typed.text:l,d=He(e,t),f=(S,A)=>{let F=`${S.trim()} ${A}`.trim();Z(e,t,i&&!S.trim()?void 0:F),De()},b=S=>{let A=S.target.value,[F,ye]=uu(A,o);h({typed:{key:r,text:A}}),f(F,ye||p)};return s`<div class="field rate ${d?"wants":""}">
    <label for=${r}>${n}</label>
    <div class="rate-of">
      <input
        id=${r}
        .value=${ae(c)}
        @input=${b}
        @blur=${Dr}
        inputmode="text"
        autocomplete="off"
        spellcheck="false"
        aria-invalid=${d?"true":"false"}
        aria-describedby=${d?`${r}-said`:u}
      />
      <select
        aria-label="${n}: of what"
        @change=${S=>f(c,S.target.value)}
      >
        <option value="" .selected=${ae(p==="")}>of what?</option>
        ${o.map(S=>s`<option value=${S} .selected=${ae(S===p)}>${S}</option>`)}
      </select>
    </div>
    ${ge(r,d)}
  </div>`}function yd(e){let t=e.map(i=>/^\s*(\d+(?:[.,]\d+)?)\s*%\s*$/.exec(String(i??""))?.[1]),n=t.filter(i=>i!==void 0).map(i=>Number(i.replace(",","."))),o=n.reduce((i,r)=>i+r,0);return{sum:Math.round(o*1e6)/1e6,unread:t.length-n.length}}var vd=.01+1e-9;function Qo(e,t){let{sum:n,unread:o}=yd(t),i=l=>`${String(Math.round(l*1e6)/1e6)} %`;if(o===t.length)return`${e} have no share yet.`;if(o)return`${e} add to ${i(n)} so far; ${o===1?"one has no share that can be added":`${o} have no share that can be added`}.`;let r=100-n;return Math.abs(r)<=vd?`${e} add to ${i(n)}.`:r>0?`${e} add to ${i(n)}: ${i(r)} ${r===1?"is":"are"} missing.`:`${e} add to ${i(n)}: ${i(-r)} too much.`}var mu=(e,t)=>sn(e).find(n=>n.id===t)?.name??t,Zn=e=>({of:e,at:"/fats",in_order:!0,stays:!0}),Zo=e=>x(Zn(e));function du(e){let t=Zo(e),n=a.picking?.of===e&&a.picking.row===t.length;return s`<section class="card" aria-labelledby="fats-title">
    <h2 id="fats-title">Fats</h2>
    <ol class="formula-rows">
      ${t.map((o,i)=>kd(e,i,t))}
    </ol>
    <p class="total" role="status">
      ${t.length?Qo("The fats",t.map(o=>o.share)):"No fat yet."}
    </p>
    ${n?hu(e):z(Zn(e),"Add a fat",()=>fu(e,t.length))} ${Dd(e)}
  </section>`}function kd(e,t,n){let o=`/fats/${t}`,i=mu(e,String(n[t].fat??""))||"Which fat?",r=le(e,`${o}/fat`)??le(e,o),l=a.picking?.of===e&&a.picking.row===t;return s`<li class="formula-row" id=${I(Zn(e),t)}>
    <div class="fat-line">
      <button
        type="button"
        class="fat-name"
        id=${Y(e,`${o}/fat`)}
        aria-expanded=${l?"true":"false"}
        aria-label="${i}: choose another fat"
        @click=${()=>l?Ir():fu(e,t)}
      >
        ${i}
      </button>
      ${m({label:"Share",of:e,at:`${o}/share`,unit:"%",short:!0})} ${J(Zn(e),t,i)}
    </div>
    ${r?s`<p class="complaint">${r}</p>`:u} ${l?hu(e):u}
    ${P({of:e,name:o,pointers:[`${o}/saponification_value`,`${o}/confirmed`,`${o}/lot`],summary:`Your lot${Td(n[t])}`,body:()=>Pd(e,t)})}
  </li>`}function fu(e,t){h({picking:{of:e,row:t,text:""}}),qo(Re("find-fat")),requestAnimationFrame(()=>document.querySelector(".picker")?.scrollIntoView({block:"start"}))}function Ir(){let e=a.picking;h({picking:void 0}),e&&qo(ht(e.of,e.row<Zo(e.of).length?`/fats/${e.row}/fat`:"/fats"))}function cu(e,t){let{row:n}=a.picking,o=Zo(e);h({picking:void 0});let i=o[n]?{fat:t,share:o[n].share??""}:{fat:t,share:""};Qn(Zn(e),`${mu(e,t)} chosen`,[...o.slice(0,n),i,...o.slice(n+1)],ht(e,`/fats/${n}/share`))}function xd(e,t){let n=t.toLowerCase().split(/\s+/).filter(Boolean),o=`${e.name} ${e.id.replaceAll("_"," ")}`.toLowerCase();return n.every(i=>o.includes(i))}function hu(e){let{row:t,text:n}=a.picking,o=Zo(e).map(c=>c.fat),i=sn(e).filter(c=>xd(c,n)),r=i.filter(c=>!o.includes(c.id)||o[t]===c.id);return s`<div class="picker" role="group" aria-label="Which fat?">
    <div class="row">
      <div class="field">
        <label for="find-fat">Find a fat by its name</label>
        <input id="find-fat" .value=${n} @input=${c=>{a.picking.text=c.target.value,De()}} @keydown=${c=>{c.key==="Escape"&&Ir(),c.key==="Enter"&&r.length===1&&cu(e,r[0].id)}} autocomplete="off" spellcheck="false" />
      </div>
      <button type="button" @click=${Ir}>Close the list</button>
    </div>
    <p class="hint" role="status">
      ${i.length?i.length===1?"One fat":`${i.length} fats`:"No fat of that name. One that is not here is described in a file of your own fats."}
    </p>
    <div class="choice">
      ${i.map(c=>{let d=o.includes(c.id)&&o[t]!==c.id;return s`<button
          type="button"
          ?disabled=${d}
          aria-pressed=${o[t]===c.id?"true":u}
          @click=${()=>cu(e,c.id)}
        >
          ${c.name}${d?" (is in it)":""}
        </button>`})}
    </div>
  </div>`}function Td(e){let t=e.saponification_value,n=t,i=t===""||t!==null&&typeof t=="object"&&n.low===""?"to be said":t===void 0?"published values":t!==null&&typeof t=="object"?`${String(n.low)} to ${String(n.high)} mg KOH per g`:`${String(t)} mg KOH per g`;return`: ${e.lot?`${String(e.lot)}, `:""}${i}`}var Sd=[["published","As published"],["one","One value, from the supplier"],["range","A range, from the supplier"]],Rd={published:void 0,one:"",range:{low:"",typical:"",high:""}};function Pd(e,t){let n=`/fats/${t}/saponification_value`,o=_(e,n),i=o===void 0?"published":o!==null&&typeof o=="object"?"range":"one",r=_(e,`/fats/${t}/confirmed`)!==void 0,l=(p,c)=>m({label:p,of:e,at:c,number:!0,short:!0});return s` ${m({label:"Lot",of:e,at:`/fats/${t}/lot`,optional:!0,short:!0})}
  ${w({of:e,question:"Saponification value, mg of KOH for 1 g of fat (ISO 3657)",at:n,is_told_elsewhere:i==="one",chosen:i,answers:Sd,puts:p=>Rd[p],hint:Ad(e,E(e,`/fats/${t}/fat`))})}
  ${i==="one"?s`<div class="row">${l("Saponification value",n)}</div>`:u}
  ${i==="range"?s`<div class="row">
          ${l("Lowest",`${n}/low`)} ${l("Typical",`${n}/typical`)} ${l("Highest",`${n}/high`)}
        </div>`:u}
  ${i!=="published"||r?Lr(e,`/fats/${t}/confirmed`,"Checked in the supplier's document, though what is known of the fat contradicts it"):u}`}function Ad(e,t){let n=sn(e).find(l=>l.id===t);if(!n)return;if("own"in n)return n.own?`In your file: ${n.own}.`:void 0;let{low:o,high:i,source:r}=n.saponification_value_mg_koh_per_g;return`Published: ${o} to ${i} (${r}).`}function Dd(e){let t=hr(e),n=Array.isArray(t)?`In it: ${t.map(i=>i.name).join(", ")}.`:t==="none"?"No such file is found from here.":void 0,o=E(e,"/fats_from");return P({of:e,name:"own fats",pointers:["/fats_from"],summary:`A file of your own fats${o&&`: ${o}`}`,body:()=>m({label:"Its name, as it lies beside this formula",of:e,at:"/fats_from",optional:!0,hint:n??"Such as studio.fats.json. Its fats then stand in the list above."})})}var gu="danger-of-superfat";function _u(e,t){return s`<section class="card" aria-labelledby="lye-title">
    <h2 id="lye-title">Superfat, alkali, water</h2>
    <div class="row">
      ${m({label:"Superfat: of all that is fat, left without lye",of:e,at:"/superfat",unit:"%",described_by:Et(e).length?gu:void 0})}
    </div>
    ${Gn(e,gu)} ${Od(e)} ${Bd(e,t)}
  </section>`}function Od(e){let t=ct(e,"/alkali"),n=t.length>1?"both":t[0]?.alkali;return s`${w({of:e,question:"Alkali",at:"/alkali",chosen:n,answers:[["NaOH","NaOH, for bars"],["KOH","KOH, for soft soap"],["both","Both"]],puts:i=>Fd(t,i),then:i=>i==="both"?"/alkali/0/saponifies":"/alkali/0/purity"})}
  ${t.map((i,r)=>Md(e,i,r,t.length>1))}
  ${t.length>1?s`<p class="total" role="status">
          ${Qo("The two",t.map(i=>i.saponifies))}
        </p>`:u}`}function Fd(e,t){let n=(o,i)=>({purity:"",...e.find(r=>r.alkali===o),alkali:o,saponifies:i});return t==="both"?[n("NaOH",""),n("KOH","")]:[n(t,"100 %")]}function Md(e,t,n,o){let i=`/alkali/${n}`,r=String(t.alkali??""),l=le(e,i)??le(e,`${i}/alkali`);return s`<div class="formula-row">
    ${l?s`<p class="complaint">${l}</p>`:u}
    <div class="row">
      ${o||t.saponifies!=="100 %"?m({label:`${r}: share of the saponifying`,of:e,at:`${i}/saponifies`,unit:"%",hint:"By equivalents, not by weight."}):u}
      ${m({label:`${r}: purity`,of:e,at:`${i}/purity`,unit:"%",hint:"Pure alkali in what is weighed, from the supplier's document."})}
    </div>
    ${P({of:e,name:i,pointers:[`${i}/purity_range`],summary:`Purity that the supplier warrants${Ed(t.purity_range)}`,body:()=>Ld(e,i)})}
  </div>`}var Ed=e=>Array.isArray(e)?`: ${e.map(String).join(" to ")}`:"";function Ld(e,t){let n=`${t}/purity_range`,o=_(e,n)!==void 0;return s`${w({of:e,question:"Warranted range",at:n,chosen:o?"said":"none",answers:[["none","Not said"],["said","From ... to"]],puts:i=>i==="none"?void 0:["",""]})}
  ${o?s`<div class="row">
          ${m({label:"Lowest",of:e,at:`${n}/0`,unit:"%",short:!0})}
          ${m({label:"Highest",of:e,at:`${n}/1`,unit:"%",short:!0})}
        </div>`:u}`}var Id={lye_strength:"By the lye's strength",water_to_alkali:"By parts to the alkali",share_of_fats:"By the fats"};function Bd(e,t){let n=Object.keys(_(e,"/water")??{}),o=n.length===1?n[0]:void 0,i=Object.entries(Id);return s`${w({of:e,question:"Water: how do you say it?",at:"/water",chosen:o,answers:i,puts:r=>({[r]:""}),then:r=>`/water/${r}`,hint:Cd(t)})}
    <div class="row">${n.map(r=>Wd(e,r))}</div>`}function Wd(e,t){let n=`/water/${t}`;return t==="water_to_alkali"?m({label:"Parts of water for 1 part of pure alkali",of:e,at:n,number:!0}):t==="lye_strength"?m({label:"Strength: pure alkali in alkali and water together",of:e,at:n,unit:"%"}):m({label:"Water, as a share of the fats",of:e,at:n,unit:"%"})}function Cd(e){if(!(!e||a.is_old))return`It now makes a strength of ${$(e.lye_strength_percent,1)} %; ${$(e.water_to_pure_alkali,2)} parts to 1 of pure alkali; ${$(e.water_percent_of_fats,1)} % of the fats.`}function gt(e,t,n){let o=jd(e,t);return P({of:e,name:`${t} label`,pointers:["inci","allergens","document"].map(i=>`${t}/${i}`),summary:`For the label${o&&`: ${o}`}`,body:()=>s`${zd(e,`${t}/inci`,n)}
        <p class="question">Fragrance allergens in it</p>
        ${$u(e,`${t}/allergens`,"Allergen","Add an allergen",(i,r)=>Hd(e,i,r))}
        ${m({label:"Supplier's document, with its date",of:e,at:`${t}/document`,optional:!0})}`})}function jd(e,t){let n=ct(e,`${t}/allergens`).length;return[_(e,`${t}/inci`)===void 0?"":"INCI said",n?`${n} ${n===1?"allergen":"allergens"}`:""].filter(Boolean).join(", ")}var Br={name:"",share:""},Nd={unsaid:void 0,one:"",many:[Br]};function zd(e,t,n){let o=_(e,t),i=o===void 0?"unsaid":Array.isArray(o)?"many":"one",r=l=>l==="many"&&o?[{...Br,name:o}]:Nd[l];return s`${w({of:e,question:`INCI of ${n}`,at:t,is_told_elsewhere:i!=="unsaid",chosen:i,answers:[["unsaid","Not said"],["one","One name"],["many","A composition"]],puts:r})}
  ${i==="one"?m({label:"INCI name",of:e,at:t}):u}
  ${i==="many"?s`<p class="hint">All that is in it, water too, until it adds to 100 %.</p>
          ${$u(e,t,"INCI name","One more INCI name")}`:u}`}function Hd(e,t,n){return w({of:e,question:`Allergen ${n+1}: on the EU's list?`,at:`${t}/listed`,chosen:_(e,`${t}/listed`)===!1?"other":"as_named",answers:[["as_named","Where its name stands there"],["other","No, another substance"]],puts:o=>o==="other"?!1:void 0})}function $u(e,t,n,o,i){let r={of:e,at:t};return s`${x(r).map((l,p)=>s`<div class="row named" id=${I(r,p)}>
        ${m({label:`${n} ${p+1}`,of:e,at:`${t}/${p}/name`})}
        ${m({label:`Share ${p+1}`,of:e,at:`${t}/${p}/share`,unit:"%",short:!0})}
        ${i?.(`${t}/${p}`,p)??u} ${J(r,p,String(l.name||`${n} ${p+1}`))}
      </div>`)}
  ${z(r,o,()=>N(r,Br,n))}`}var Ud=[{list:"liquids",title:"Liquids in place of water",add:"Add a liquid",aside:"Milk, coconut milk, pur\xE9es, brine.",row:Xd},{list:"additives",title:"Additives, salts and acids",add:"Add an additive",aside:"Whatever goes in beside fats, lye, fragrance and colour.",row:Kd},{list:"fragrances",title:"Fragrances",add:"Add a fragrance",aside:"Essential and fragrance oils.",row:Vd},{list:"colours",title:"Colours",add:"Add a colour",aside:"Micas, pigments and other colours. Those of layers stand in the run.",row:Gd}];function bu(e){return Ud.map(t=>{let n={of:e,at:`/${t.list}`},o=x(n),i=(r,l)=>s`<li class="formula-row" id=${I(n,l)}>
        ${qd(e,t,n,r,l)} ${t.row(e,`${n.at}/${l}`,r)}
      </li>`;return s`<section class="card" aria-labelledby="${t.list}-title">
      <h2 id="${t.list}-title">${t.title}</h2>
      ${o.length?s`<ol class="formula-rows">
              ${o.map(i)}
            </ol>`:s`<p class="aside">${t.aside}</p>`}
      ${z(n,t.add,()=>N(n,Jd(t),t.add.replace("Add ","")))}
    </section>`})}function Jd(e){return e.list==="liquids"?{name:"",goes_into:"",composition:""}:{name:"",rate:""}}function qd(e,t,n,o,i){let r=`/${t.list}/${i}`,l=le(e,r),p=String(o.name||`number ${i+1} of the ${t.list}`);return s`${l?s`<p class="complaint">${l}</p>`:u}
    <div class="row named">
      ${m({label:"Name",of:e,at:`${r}/name`})}
      ${t.list==="liquids"?u:Yo(e,`${r}/rate`,"How much",Go)}
      ${J(n,i,p)}
    </div>`}function Wr(e,t,n,o){let i=`${t}/goes_into`,r=_(e,i);return w({of:e,question:"Goes into",at:i,chosen:r,answers:n,puts:p=>p,hint:o||r?void 0:"The batter, unless you name another place."})}var wu=[["lye","The lye"],["fats","The fats"],["batter","The batter"]];function Cr(e,t,n){let o=(l,p,c)=>l?`${p}${String(l)}${c}`:"",i=[o(n.bulk_density,""," in the spoon"),o(n.density,""," in the batter"),o(n.limit,"at most ","")].filter(Boolean).join(", "),r=["bulk_density","density","limit"].map(l=>`${t}/${l}`);return P({of:e,name:`${t} densities`,pointers:r,summary:`Densities and limit${i&&`: ${i}`}`,body:()=>s` <div class="row">
          ${m({label:"Density in the spoon",of:e,at:`${t}/bulk_density`,unit:"g/ml",optional:!0,hint:"A level cup weighed, by the cup's volume. Needed for spoons."})}
          ${m({label:"Density of itself",of:e,at:`${t}/density`,unit:"g/ml",optional:!0,hint:"Once it is in the batter. Left out, water's is taken, and that is said."})}
        </div>
        ${Yo(e,`${t}/limit`,"The most that the supplier's document allows",pu,!0)}`})}function jr(e,t,n,o){let i=(l,p)=>l===void 0?"":l==="none"?`no ${p}`:p,r=[i(n.contains_fat,"fat"),o?i(n.acid,"acid"):""].filter(Boolean).join(", ");return P({of:e,name:`${t} holds`,pointers:[`${t}/contains_fat`,`${t}/acid`],summary:`${o?"Fat or acid":"Fat"} in it${r&&`: ${r}`}`,body:()=>s`${lu(e,t)} ${o?Er(e,t):u}`})}var Xo=(e,t,n)=>gt(e,t,String(n.name||"it"));function Kd(e,t,n){return s`${Wr(e,t,wu,!0)}
    <div class="folds">${jr(e,t,n,!0)} ${Cr(e,t,n)} ${Xo(e,t,n)}</div>`}function yu(e,t,n){return P({of:e,name:`${t} place`,pointers:[`${t}/goes_into`],summary:`Goes into the ${String(n.goes_into??"batter")}`,body:()=>Wr(e,t,wu,!1)})}function Vd(e,t,n){return s`<div class="folds">
    ${Cr(e,t,n)} ${Xo(e,t,n)} ${yu(e,t,n)} ${jr(e,t,n,!1)}
  </div>`}function Gd(e,t,n){return s`${Qd(e,t)}
    <div class="folds">
      ${Cr(e,t,n)} ${Xo(e,t,n)} ${yu(e,t,n)} ${jr(e,t,n,!0)}
    </div>`}var Yd=[["formula","taken out of the formula's"],["extra","put on top, and counted as fat"]];function Qd(e,t){let n=`${t}/dispersed_in`,o=_(e,n)!==void 0,i=_(e,`${n}/from`);return s`${w({of:e,question:"Stirred into oil first",at:n,chosen:o?"oil":"dry",answers:[["dry","No"],["oil","Yes"]],puts:l=>l==="oil"?{fat:"",oil_per_colour:""}:void 0})}
  ${o?s`<div class="row">
            ${Ee({label:"Which oil",of:e,at:`${n}/fat`,answers:Vo(e),unsaid:"choose ..."})}
            ${m({label:"g of oil for 1 g of colour",of:e,at:`${n}/oil_per_colour`,number:!0,short:!0})}
          </div>
          ${w({of:e,question:"That oil is",at:`${n}/from`,chosen:i,answers:Yd,puts:l=>l,hint:i?void 0:"Taken out of the formula's own, unless you say so."})}`:u}`}var Zd=["coconut milk, canned","goat milk","cow's milk, whole","cream, heavy","milk, evaporated","carrot, pur\xE9ed raw","cucumber, pur\xE9ed with its skin","pumpkin, canned pur\xE9e","avocado, pur\xE9ed","brine, saturated at 20 \xB0C"];function Xd(e,t,n){let o=(i,r,l)=>P({of:e,name:`${t}/${i}`,pointers:[`${t}/${i}`],summary:r,body:l});return s`${tf(e,t,n)}
    ${Wr(e,t,[["lye","The lye"],["batter","The batter"]],!0)}
    ${of(e,t)}
    <div class="folds">
      ${o("frozen",n.frozen===!0?"Goes in as ice":"Goes in as ice: no",()=>ef(e,`${t}/frozen`))}
      ${o("acid",`Acid in it${n.acid===void 0?"":n.acid==="none"?": none":": some"}`,()=>Er(e,t))}
      ${o("density",`Density${n.density?`: ${String(n.density)}`:""}`,()=>m({label:"Density",of:e,at:`${t}/density`,unit:"g/ml",optional:!0,hint:"Left out, it is worked out from what is in it."}))}
      ${Xo(e,t,n)}
    </div>`}function ef(e,t){let n=_(e,t)===!0?"ice":"liquid";return w({of:e,question:"Goes in as ice, which keeps the lye cooler",at:t,chosen:n,answers:[["liquid","No"],["ice","Yes"]],puts:i=>i==="ice"?!0:void 0})}function tf(e,t,n){let o=n.replaces!==void 0?"replaces":n.rate!==void 0?"rate":void 0,i=r=>({...q(e,t,["replaces","rate"]),[r]:""});return s`${w({of:e,question:"How much",at:t,asked_at:`${t}/replaces`,is_told_elsewhere:o!==void 0,chosen:o,answers:nf,puts:i})}
  ${o==="replaces"?s`<div class="row">
          ${m({label:"Of the formula's water",of:e,at:`${t}/replaces`,unit:"% of water",hint:"Its own water stands in for that share."})}
        </div>`:u}
  ${o==="rate"?Yo(e,`${t}/rate`,"Rate",Go):u}`}var nf=[["replaces","In place of so much water"],["rate","By the fats or the batter"]];function of(e,t){let n=`${t}/composition`,o=typeof _(e,n)=="object",i={water:"",sugar:"",salt:"",source:""},r=(p,c)=>m({label:p,of:e,at:`${n}/${c}`,unit:"%",short:!0});return s`${w({of:e,question:"What 100 g of it holds",at:n,is_told_elsewhere:!o,chosen:o?"label":"shipped",answers:[["shipped","Shipped figures"],["label","The label's figures"]],puts:p=>p==="label"?i:""})}
  ${o?s`<div class="row">${r("Water","water")} ${r("Sugar","sugar")} ${r("Salt","salt")}</div>
          ${Mr(e,`${n}/fat`,[["none","None"],["some","Holds fat"]],[["milk_fat","Milk fat"],...Vo(e)])}
          <div class="row">
            ${m({label:"Where the figures are from",of:e,at:`${n}/source`,hint:"Such as: the tin's label."})}
          </div>`:s`<div class="row">
          ${Ee({label:"Shipped figures of",of:e,at:n,answers:Zd.map(p=>[p,p]),unsaid:"choose ..."})}
        </div>`}`}function k({key:e,label:t,shown:n,sum:o,size:i="plain",note:r}){let l=a.open.has(e),p=`sum-${e.replaceAll(/[^\w]/g,"-")}`,c=s`<span class="name">${t}${r?s`<small>${r}</small>`:u}</span>
    <span class="value ${i} ${a.is_old?"old":""}"
      ><b>${n[0]}</b>${n[1]?s` <i>${n[1]}</i>`:u}</span
    >`;return o?s`<div class="figure">
    <button
      type="button"
      class="line"
      aria-expanded=${l?"true":"false"}
      aria-controls=${l?p:u}
      @click=${()=>Zt("open",e)}
    >
      ${c}<span class="how" aria-hidden="true">${l?"\u2013":"="}</span>
    </button>
    ${l?rf(p,o):u}
  </div>`:s`<div class="figure"><div class="line">${c}</div></div>`}function Ct(e,t,n){return k({key:e,label:t,shown:["",""],sum:n})}function rf(e,t){return s`<div class="sum" id=${e}>
    <p class="formula">${t.formula}</p>
    <table>
      <caption>
        With
      </caption>
      <tbody>
        ${t.with.map(([n,o,i])=>s`<tr>
              <th scope="row">${n}</th>
              <td>${o}</td>
              <td>${i??""}</td>
            </tr>`)}
      </tbody>
    </table>
    ${t.sources?.length?s`<p class="sources">From: ${t.sources.join("; ")}.</p>`:u}
  </div>`}var B=(e,t=1)=>`${Te(e,t)} g`,xu=e=>`${$(e,3)} g`,et=(e,t)=>It(j("metric",re(e,t),"down")),V=e=>`${$(e,3)} ml`,H=e=>Nt(g(a.run.now,e)),$n=(e,t)=>Nt(g(a.formulas[e]?.now,t)),D="the run";function Nt(e){return e==null?"not said":typeof e!="object"?String(e):Object.values(e).map(Nt).join(", ")}function Tu(e){return{formula:"pieces to make = pieces to sell \xF7 (1 \u2212 spoilage), rounded up to whole casts, or to full moulds where they are all filled; batches as few as the fillings and what sets their size allow, and as even as can be",with:[["to sell",String(e.pieces.sell),D],["spoilage",H("/spoilage"),D],["to make",String(e.pieces.make)],["cavities",String(e.pieces.cavities),"the mould"],["fillings",String(e.pieces.fillings),"to make \xF7 cavities, rounded up"],...e.batches.map(t=>[te(t.count,"batch","batches"),de(e,t)])]}}function Su(e){return{formula:"mass of one pour = volume to the pour line \xD7 density of the batter",with:[["volume to the line",V(e.volume_each_ml),`level curve of ${e.mould} at ${$(e.depth_mm,2)} mm`],["density",`${e.density_g_per_ml} g/ml`,e.formula],...e.displaced_ml?[["pushed aside by embeds",V(e.displaced_ml)]]:[],["one pour",B(e.mass_each_g,3)]],sources:ti()}}function ti(){let e=a.measured?.gauge.measurements?.map(n=>`${n.by} (${V(n.brimful_ml)} to the brim)`)??[],t=a.measured?.gauge.measurements?.some(n=>n.by==="water");return[...e,...t?["density of water: Kell 1975"]:[]]}function Ru(e){return{formula:"one millimetre = area of the free surface at the pour line \xD7 1 mm",with:[["volume of 1 mm",V(e.ml_per_mm),`slope of the level curve at ${$(e.depth_mm,2)} mm`],["density",`${e.density_g_per_ml} g/ml`,e.formula],["to the brim",V(e.brimful_ml)]],sources:ti()}}function Pu(e,t){return{formula:"weigh for a layer = mass in one piece \xD7 pieces of the batch, with its share of the losses",with:[["from",`${$(t.from_mm,1)} mm`],["to",`${$(t.to_mm,1)} mm`],["volume in one piece",V(t.volume_each_ml)],["mass in one piece",B(t.mass_each_g)],["all batter to make",B(e.make_g)]]}}function ni(e,t){let n=g(a.run.now,`/losses/${e}`),o=Object.entries(n??{}).map(([i,r])=>[i.replaceAll("_"," "),Nt(r),D]);return{formula:"batter to make = in the pieces + losses, after every ingredient is rounded to the scale",with:[["in the pieces",B(t.in_pieces_g)],...o,["losses together",B(t.lost_g)],["to make",B(t.make_g)]]}}function oi(e,t){return e==="pipe"?{formula:"density of the whip = weigh-cup's net weight \xF7 its volume; overrun = plain density \xF7 whipped density \u2212 1",with:[["weigh-cup",H("/pipe/whip"),D],["whipped",`${t.density_g_per_ml} g/ml`],["plain",`${t.plain_density_computed_g_per_ml} g/ml`,"computed, before whipping"]]}:{formula:"density = mass of everything \xF7 sum of the volumes, at the pouring temperature",with:[["density",`${t.density_g_per_ml} g/ml`],["temperature",$n(e,"/pour_temperature"),t.formula],["computed",`${t.plain_density_computed_g_per_ml} g/ml`]],sources:["fats: each fat's published density and slope","lye: Lalibert\xE9 and Cooper 2004","volumes taken as additive, good to 1 to 2 %"]}}var jt=e=>e===0?Me(e):`${e} %`;function Au(e,t){let{aim:n,effective:o,low:i,high:r,likely_low:l,likely_high:p,doubts:c}=t.superfat_percent;return{formula:"effective superfat = 1 \u2212 alkali weighed \xD7 purity \xF7 alkali that the weighed fats and acids need",with:[["aim",`${n} %`,t.formula],["effective",jt(o),"after rounding fats and alkali to the scales"],["lowest",jt(i),"if every range falls the wrong way"],["highest",jt(r)],...l===void 0||p===void 0?[]:[["likely",`${jt(l)} to ${jt(p)}`,"19 batches in 20, each doubt even over its range and independent of the others"]],...(c??[]).slice(0,3).map(d=>[`doubt: ${d.cause}`,`${Math.round(d.percent_of_variance)} %`,"of the variance"]),["fats",B(t.fats_g)],["purity",$n(e,"/alkali/0/purity")]],sources:Ou(e)}}function Du(e){let t=g(a.formulas[e]?.now,"/fats");return Array.isArray(t)?t.map(n=>{let{fat:o,share:i,saponification_value:r}=n;return{id:String(o),share:String(i),own:r}}):[]}function Ou(e){return Du(e).map(({id:t,own:n})=>{let o=a.fats.find(r=>r.id===t),i=o?.saponification_value_mg_koh_per_g;return n!==void 0?`${o?.name??t}: your lot's saponification value ${Nt(n)} mg/g`:i?`${o.name}: ${i.low} to ${i.high} mg/g, ${i.source}`:t})}function sf(e,t){return{formula:"alkali = [fats \xD7 saponification value \xD7 M(alkali) \xF7 M(KOH) \xD7 (1 \u2212 superfat) + what acids take] \xF7 purity, rounded down to the fine scale",with:[["fats, as rounded",B(t.fats_g)],["superfat aimed at",`${t.superfat_percent.aim} %`,t.formula],["purity",$n(e,"/alkali/0/purity"),t.formula],["fine scale reads",H("/scales/fine/reads"),D],...t.ingredients.filter(dn).map(n=>[n.name,Ho(n)])],sources:["M(NaOH) 39.997 and M(KOH) 56.105 g/mol, IUPAC atomic weights",...Ou(e)]}}function zr(e,t){return{formula:"water = pure alkali \xD7 (1 \u2212 strength) \xF7 strength",with:[["asked for",$n(e,"/water"),t.formula],["lye strength",`${$(t.lye_strength_percent,1)} %`,"alkali \xF7 (alkali + water)"],["water : alkali",`${$(t.water_to_pure_alkali,2)} : 1`],["water as a share of the fats",`${$(t.water_percent_of_fats,1)} %`],["large scale reads",H("/scales/large/reads"),D]]}}function Fu(e,t,n){if(dn(n))return sf(e,t);if(n.role==="water")return zr(e,t);let o=a.fats.find(r=>r.name===n.name),i=Du(e).find(({id:r})=>r===o?.id)?.share;return o&&i?{formula:"weigh = fats for the batter \xD7 share, rounded to the scale",with:[["fats, as rounded",B(t.fats_g)],["share",i,t.formula],...Nr(n),...vu(n)],sources:[`saponification value: ${o.saponification_value_mg_koh_per_g?.source??"your own"}`,`density: ${o.density_g_per_ml?.source??"estimated"}`]}:{formula:"weigh = rate \xD7 what the rate is of, rounded to the scale",with:[["rate",af(e,n.name),t.formula],["fats",B(t.fats_g)],["batter",B(t.make_g)],...Nr(n),...vu(n)]}}var Nr=e=>e.scale_step_g?[["the scale shows",Jl(e.scale_step_g),D]]:[];function vu(e){return e.set_aside_for_colours_g?[["of it set aside to disperse colours",B(e.set_aside_for_colours_g)]]:[]}function af(e,t){for(let n of["additives","fragrances","colours"]){let o=g(a.formulas[e]?.now,`/${n}`);for(let i of Array.isArray(o)?o:[])if(g(i,"/name")===t)return Nt(g(i,"/rate"))}return"see the formula"}function Mu(e,t,n,o){let i=H(`${o}/bulk_density`);return{formula:"powder = rate \xD7 what the rate is of: this layer's batter, or the fats in it (layer \xD7 fats \xF7 batter); a rate by the spoon \xD7 bulk density; rounded to the fine scale",with:[["rate",H(`${o}/rate`),D],["this layer's batter",B(t.g)],["fats in all the base",B(e.fats_g)],["all the base",B(e.make_g)],...g(a.run.now,`${o}/bulk_density`)===void 0?[]:[["bulk density",i,D]],...Nr(n)]}}var Hr=e=>[e.pour,...Bl(e)];function ei(e,t,n){return Hr(e).map((o,i)=>[`${t} for ${e.lye_pot?.shares[i]?.batter??o.formula}`,n(o),"its own weighing, on the lye shelf"])}var Ur=(e,t)=>e.ingredients.filter(n=>t?n.name===t:dn(n)).map(Ho).join(" + ")||"none",Eu=e=>e.ingredients.filter(t=>t.role==="water").map(Ho).join(" + ")||"none";function Lu(e,t){return{formula:"alkali in the pot = what each batter's own lye takes, added up, rounded down to the scale",with:[...ei(e,t,n=>Ur(n,t)),["fine scale reads",H("/scales/fine/reads"),D]]}}function Iu(e,t){return{formula:"water in the pot = all the alkali \xD7 the least plain water for a gram of alkali that one of the batters takes, before its own scale rounded it; rounded to the scale",with:[...ei(e,"water in the lye",Eu),...t.alkalis.map(n=>[n.name,et(n,""),"in the pot"]),...ei(e,"alkali",n=>Ur(n))]}}function Bu(e){return{formula:"lye in the pot = alkali + water, to the step the shares are weighed in; strength = pure alkali \xF7 (pure alkali + water)",with:[["water",et(e,"water_")],...e.alkalis.map(t=>[t.name,et(t,"")]),["strength",`${$(e.strength_percent,2)} %`],...e.full_pot_g===null?[]:[["the empty pot",H("/lye_pot/pot_tare"),D],["pot and lye",e.full_pot_g_text===void 0?xu(e.full_pot_g):`${e.full_pot_g_text} g`]]]}}function Wu(e,t,n){let o=t.shares[n],i=Hr(e)[n];return{formula:"share = lye in the pot \xD7 this batter's alkali \xF7 all the alkali, rounded down to the scale, as alkali is; what is left stays in the pot; superfat then = 1 \u2212 (1 \u2212 its own) \xD7 (alkali taken \u2212 acids) \xF7 (alkali planned \u2212 acids)",with:[["lye in the pot",et(t,"lye_")],...ei(e,"alkali",r=>Ur(r)),["share",et(o,"lye_")],...t.left_g?[["left in the pot",`${t.left_g_text??$(t.left_g,3)} g`]]:[],["superfat with its own lye",jt(i.superfat_percent.effective)],["superfat out of the pot",jt(o.superfat_percent)]],sources:["acids as KOH: each acid's equivalent, in the formula's additives"]}}function Cu(e,t,n){let o=Hr(e)[n];return{formula:"plain water to add = the water of this batter's own lye \u2212 the water that is in its share, both before rounding; under half a gram is left out",with:[["water of its own lye",Eu(o),"its own weighing"],["its share of the lye",et(t.shares[n],"lye_")],["water in the pot",et(t,"water_")],["lye in the pot",et(t,"lye_")],["to add",et(t.shares[n],"top_up_")]]}}function ju(e,t,n){let o=e.bottles[t],{part:i,g:r,percent_of_batter:l}=o.parts[n],{pour:p,pipe:c}=e.whole;return{formula:"out of the bottle = what it holds \xD7 this batter \xF7 all batters of the run, rounded down to the scale: one rate in all",with:[["the bottle holds",H(`/bottles/${t}/holds`),D],["base, in the run",B(p.make_g)],...c?[["topping, in the run",B(c.make_g)]]:[],[i,xu(r)],["of the batter",`${l} %`]]}}var ku={trials:"by trials = mean of the weighed trials \xF7 density of their whip (its weigh-cup, net \xF7 what it holds)",beads:"by beads = what the moves lay down, added up \xD7 the hand's factor of the tip, if it has one",envelope:"by outline = solid share \xD7 volume of a cone (\u03C0 \xF7 12 \xD7 across\xB2 \xD7 high) or of half an ellipsoid (\u03C0 \xF7 6 \xD7 across\xB2 \xD7 high)"};function Nu(e,t){if(t==="beads")return{formula:ku.beads,with:[...(e.visible_by?.moves??[]).map((o,i)=>[`${i+1}. ${H(`/pipe/beads/moves/${i}/move`)}`,V(o.volume_ml)]),["hand's factor",g(a.run.now,"/pipe/beads/tip/hand/factor")===void 0?"as the tip's file says, else none":H("/pipe/beads/tip/hand/factor")]]};let n=t==="trials"?["weighed","weigh_cup/net","weigh_cup/holds"]:["form","diameter","height","solidity"];return{formula:ku[t],with:n.map(o=>[o.replace("weigh_cup/","weigh-cup, "),H(`/pipe/${t}/${o}`),D])}}var lf={dollop:"half an ellipsoid = \u03C0 \xF7 6 \xD7 across\xB2 \xD7 high",ring:"ring = section of the bead \xD7 2 \u03C0 \xD7 radius (Pappus)",spiral:"spiral = section of the bead \xD7 length of its path (arc-length integral)",tail:"tail = section of the bead \xD7 length \xF7 3, a cone",dots:"dots = how many \xD7 section of the bead \xD7 high \xD7 2 \xF7 3",shells:"shells = how many \xD7 section of the bead \xD7 length \xF7 2",bead:"bead = section \xD7 length"};function zu(e,t,n){let o=`/pipe/beads/moves/${e}`,i=Object.entries(g(a.run.now,o)??{}).filter(([r])=>r!=="move");return{formula:`${lf[H(`${o}/move`)]??"section of the bead \xD7 length"}; section = opening of the tip \xD7 swell`,with:[["opening of the tip",n],["swell",H("/pipe/beads/swell"),D],...i.map(([r,l])=>[r.replaceAll("_"," "),Nt(l),D]),...t.length_mm>0?[["path, pressing",`${$(t.length_mm,1)} mm`]]:[],["laid down",V(t.volume_ml)]]}}function Hu(e){let t=H("/pipe/fills_headspace");return{formula:"topping = visible shape + share of the headspace \xD7 headspace; its mass = that \xD7 density of the whip",with:[["visible shape",V(e.visible_each_ml),uf()],["share of the headspace",t,D],["in the headspace",V(e.in_headspace_each_ml)],["together",V(e.volume_each_ml)],["density of the whip",`${e.density_g_per_ml} g/ml`,"weigh-cup"]]}}function uf(){return g(a.run.now,"/pipe/trials")?"mean of the trials \xF7 their weigh-cup's density":g(a.run.now,"/pipe/beads")?"the beads of the tip, move by move":"the outline \xD7 its solid share"}function Uu(e){return{formula:"this bowl pipes = batter left after losses \xF7 today's density \xF7 topping of one piece, rounded down",with:[["today's weigh-cup",H("/pipe/whip_now"),D],["planned weigh-cup",H("/pipe/whip"),D],["topping of one piece",V(e.volume_each_ml)],["batter",B(e.make_g)],["to pipe",String(e.pieces)]]}}function Jr(e,t){let n=o=>H(`/perch/${t}/${o}`);return{formula:"melt = (casts \xD7 mass of one + film left in the jug \xD7 tray fills) \xF7 (1 \u2212 melt loss)",with:[g(a.run.now,`/perch/${t}/per_piece`)===void 0?["in each cast",n("per_cast"),D]:["on each piece",n("per_piece"),D],["spares",n("spares"),D],["casts",String(e.casts)],["mass of one",B(e.mass_each_g,3),`${V(e.volume_each_ml)} \xD7 ${n("density")}`],["tray fills",String(e.tray_fills),`${e.cavity_fills} hollows filled`],["film in the jug",n("jug_film"),D],["melt loss",n("melt_loss"),D]]}}function qr(e){return{formula:"bars = rows \xD7 columns that fit after trimming, planing and the kerf of each cut",with:[["rows",String(e.rows)],["columns",String(e.columns)],["bar",H("/cut/bar"),D],["kerf",H("/cut/kerf"),D],["smallest bar",V(e.bar_ml.least)],["largest bar",V(e.bar_ml.greatest)]]}}function Ju(e){let t=e.piece.cost;return{formula:"cost of a piece = sum of (price \xF7 pack \xD7 used) \xF7 pieces to sell",with:[...t.materials.map(n=>[n.name,n.amount===null?"unpriced":`${n.amount} ${t.currency}`,`${$(n.g,1)} g used`]),["all materials",`${t.total} ${t.currency}`],["to sell",String(e.pieces.sell),D]]}}function qu(e){return{formula:"cured = sum over the parts of dry matter + water \xD7 (1 \u2212 share lost in cure)",with:[...(e.piece.parts??[]).map(n=>[n.name,`${B(n.fresh_g)} fresh`,n.cured_g===null?"":`${B(n.cured_g)} cured`]),["base, water lost in cure",$n("pour","/water_lost_in_cure"),e.pour.formula],...e.pipe?[["topping, water lost in cure",$n("pipe","/water_lost_in_cure"),e.pipe.formula]]:[],["fresh",B(e.piece.fresh_g)],["cured",e.piece.cured_g===null?"not known":B(e.piece.cured_g)]]}}function Ku(e,t){return{formula:"for the whole run = what is weighed for one batch \xD7 how often it is made, added up",with:e.batches.flatMap(n=>t(n).map(([o,i,r])=>[`${de(e,n)}, ${Ze(n.count)}${o}`,i,r]))}}var wn="/pipe/beads",oe=`${wn}/tip`,_t={at:`${wn}/moves`,in_order:!0},Kr="\0own",Yu={tip:"",swell:"",moves:[]},Le=(e,t)=>({name:e,label:t,kind:"length"}),Vu={name:"count",label:"How many",kind:"count"},Gu=Le("circle_radius","Radius of their circle"),Gr={dollop:{words:"Dollop",does:"A heap in the middle.",measures:[Le("diameter","Across"),Le("height","High")]},ring:{words:"Ring",does:"One closed turn.",measures:[Le("radius","Radius, to the bead's middle")]},spiral:{words:"Spiral",does:"Turns that climb, wider or narrower.",measures:[{name:"turns",label:"Turns",kind:"number"},Le("start_radius","Radius at the start"),Le("end_radius","Radius at the end"),Le("rise","Climbs by")]},tail:{words:"Tail",does:"Drawn straight up to a point.",measures:[Le("length","Long")]},dots:{words:"Dots",does:"Upright dabs on a circle.",measures:[Vu,Gu,Le("height","High")]},shells:{words:"Shells",does:"Strokes lying outward from a circle.",measures:[Vu,Gu,Le("length","Long")]},bead:{words:"Straight bead",does:"Along the mould.",measures:[Le("length","Long"),{name:"aside",label:"Beside the middle by",kind:"signed",optional:!0}]}};function Qu(e){return s`${pf()} ${ri()?mf():u}
    ${m({label:"Swell of the bead",at:`${wn}/swell`,number:!0,hint:"Section of the bead \xF7 opening of the tip: 1 if they are the same."})}
    <h4>What the tip does, in order</h4>
    <div class="items">${x(_t).map((t,n)=>gf(t,n,e))}</div>
    ${wf()}`}var ri=()=>typeof _("run",oe)=="object";function Zu(){let e=_("run",`${wn}/tips_from`);return e===void 0?wl():yl(String(e))}function pf(){let e=n=>n===Kr?Q("run","a tip of your own",oe,{name:"",round:{radius:""}},ep):Z("run",oe,n),t=Zu().map(n=>[n.name,n.opening?`${n.name} (${n.opening})`:n.name]);return s`${Ee({label:"Tip",at:oe,answers:[...t,[Kr,"My own, measured"]],unsaid:"Which tip?",take:e,chosen:ri()?Kr:void 0})}
  ${ri()?u:P({name:"tips",pointers:[`${wn}/tips_from`],summary:"Tips of a file of your own",body:()=>m({label:"File of tips",at:`${wn}/tips_from`,optional:!0,hint:"Beside your run, such as studio.tips.json. Emptied, the tips that ship are offered."})})}`}var Xu=ft("run",oe,"own"),ep=Wt(Xu),Vr=[["round","Round"],["star","Star"],["outline","Another outline"]],ii={x:"",y:""},cf={round:{radius:""},star:{points:"",outer_radius:"",inner_radius:""},outline:[ii,ii,ii]};function mf(){let e=Vr.map(([n])=>n).find(n=>_("run",`${oe}/${n}`)!==void 0),t=n=>({...q("run",oe,Vr.map(([o])=>o)),[n]:cf[n]});return s`<div class="part" id=${Xu} role="group" aria-label="My own tip">
    ${L("run",oe)} ${m({label:"What you call the tip",at:`${oe}/name`})}
    ${w({question:"Opening of the tip",at:oe,is_told_elsewhere:!0,chosen:e,answers:Vr,puts:t})}
    ${e?ff(e):u}
    ${P({name:"hand",pointers:[bn,`${oe}/note`],summary:"What your hand adds",body:df})}
  </div>`}var bn=`${oe}/hand`;function df(){let e=t=>_("run",t)!==void 0;return s`<div class="row">
      ${m({label:"Hand's factor",at:`${bn}/factor`,number:!0,short:!0,hint:"What your toppings weigh \xF7 what the moves come to."})}
      ${e(`${bn}/factor`)?m({label:"From so many trials",at:`${bn}/trials`,count:!0,optional:!0,short:!0}):u}
    </div>
    ${e(bn)?s`<button
            type="button"
            @click=${()=>Q("run","hand's factor taken away",bn,void 0,ep)}
          >
            Leave out the hand's factor
          </button>`:u}
    ${m({label:"Note on the tip",at:`${oe}/note`,optional:!0})}`}function ff(e){if(e==="outline")return hf();let t=(n,o)=>m({label:o,at:`${oe}/${e}/${n}`,unit:"mm",short:!0});return s`<div class="row">
    ${e==="round"?t("radius","Radius of the opening"):s`${m({label:"Points",at:`${oe}/star/points`,count:!0,short:!0})}
          ${t("outer_radius","Radius to the points")} ${t("inner_radius","Radius to the notches")}`}
  </div>`}function hf(){let e={at:`${oe}/outline`};return s`<p class="hint">
      Its corners in order, seen from the front, as far right (x) and up (y) as they lie; −8 mm is to the left.
    </p>
    ${x(e).map((t,n)=>s`<div class="row" id=${I(e,n)}>
          ${m({label:`Corner ${n+1}, x`,at:`${e.at}/${n}/x`,unit:"mm",short:!0})}
          ${m({label:`Corner ${n+1}, y`,at:`${e.at}/${n}/y`,unit:"mm",short:!0})}
          ${J(e,n,`corner ${n+1}`)}
        </div>`)}
    ${z(e,"One more corner",()=>N(e,ii,"corner"))}`}function gf(e,t,n){let o=Gr[String(e.move)],i=`${_t.at}/${t}`,r=`${t+1}. ${o?.words??String(e.move)}`;return s`<div class="part" id=${I(_t,t)} role="group" aria-label=${r}>
    <div class="part-head">
      <p class="part-title">${r}</p>
      ${J(_t,t,r)}
    </div>
    ${L("run",i)}
    <div class="row">
      ${(o?.measures??[]).map(l=>_f(i,l))}
      ${m({label:"Starts this high",at:`${i}/at_height`,unit:"mm",optional:!0,short:!0})}
    </div>
    ${$f(t,n)}
  </div>`}function _f(e,{name:t,label:n,kind:o,optional:i}){let r=o==="signed"?"\u221212 mm is to the other side.":void 0,l=o==="length"||o==="signed"?"mm":void 0;return m({label:n,at:`${e}/${t}`,unit:l,hint:r,optional:i,short:!0,count:o==="count",number:o==="number"})}function $f(e,t){let n=t?.visible_by?.moves??[],o=n[e];if(!o||n.length!==x(_t).length)return u;let i=o.length_mm>0?`${$(o.length_mm/10,1)} cm of bead`:"";return k({key:`pipe.move.${e}`,label:"Lays down",note:i,shown:ne(a.units,o.volume_ml),sum:zu(e,o,bf())})}function bf(){if(ri())return"as measured, above";let e=E("run",oe),t=Zu().find(n=>n.name===e);return t?.area_mm2?`${e}: ${t.opening}, ${$(t.area_mm2,1)} mm\xB2`:e}function wf(){let e=o=>({move:o,...Object.fromEntries(Gr[o].measures.filter(i=>!i.optional).map(i=>[i.name,""]))}),t=Y("run",_t.at),n=le("run",_t.at);return s`${ge(t,n)}
    <div
      class="choice words"
      role="group"
      id=${t}
      tabindex="-1"
      aria-label="Add a move"
      aria-describedby=${n?`${t}-said`:u}
    >
      ${Object.entries(Gr).map(([o,{words:i,does:r}])=>s`<button type="button" @click=${()=>N(_t,e(o),i)}>
            <b>+ ${i}</b> <small>${r}</small>
          </button>`)}
    </div>
    <p class="hint">
      Without a height a move starts on the paper; a spiral or a tail goes on where the move before it ended.
    </p>`}var yf={pour:[{name:"overpour",label:"Overpour, of what is in the pieces",unit:"%"},{name:"pot",label:"Left in the pot",unit:"g"},{name:"jugs",label:"Left in the jugs",unit:"g"},{name:"test_piece",label:"Test piece",unit:"g"}],pipe:[{name:"bag",label:"Left in the bag",unit:"g"},{name:"bowl_and_whisk",label:"Left in bowl and whisk",unit:"g"},{name:"tip",label:"Left in the tip",unit:"g",optional:!0},{name:"each_bag_change",label:"Lost at each bag change",unit:"g",optional:!0}]};function Xn(e,t){return yf[e].map(({name:n,label:o,unit:i,optional:r})=>m({label:t?`${t}: ${o.toLowerCase()}`:o,at:`/losses/${e}/${n}`,unit:i,short:!0,optional:r}))}var vf=["ice bath","cold water","fridge","room"].map(e=>[e,e==="room"?"the room":e]);function eo(e){let t=`/${e}/warmth`,n=(o,i)=>m({label:i,at:`${t}/${o}`,unit:a.units==="us"?"\xB0F":"\xB0C",optional:!0,short:!0});return P({name:t,pointers:[t],summary:"How warm",body:()=>s` <p class="hint">What you leave blank is left out. The lye shelf tells what follows.</p>
        ${L("run",t)}
        <div class="row">
          ${n("lye_made_at","Room and dry alkali")} ${n("water_at","Water")}
          ${m({label:"Of the water, as ice",at:`${t}/ice_share`,unit:"%",optional:!0,short:!0})}
          ${n("lye_used_at","Lye when it is used")} ${n("fats_at","Fats")}
          ${n("batter_limit","Batter must stay below")}
          ${Ee({label:"The lye cools in",at:`${t}/cooled_in`,answers:vf,unsaid:"not said",optional:!0})}
        </div>`})}var tp={holds:"",net:""},Pe=()=>g(a.run.now,"/pipe")!==void 0;function np(){let e=g(a.run.now,"/pour/formula")??"";_n("run","Topping added",n=>U(U(n,"/pipe",{formula:e,fills_headspace:"",whip:tp}),"/losses/pipe",{bag:"",bowl_and_whisk:""}),Re("lane-pipe"))}function kf(e){let t=Object.keys(g(e,"/batch")??{}).length===1;return["/pipe","/losses/pipe","/lye_pot",g(e,"/batch/whippings")!==void 0&&t?"/batch":"/batch/whippings"].reduce((o,i)=>g(o,i)===void 0?o:U(o,i,void 0),e)}function xf(){_n("run","Topping taken away",kf,Re("topping-back"))}function op(){let e=a.past.at(-1)?.run?.now;return!e||g(e,"/pipe")===void 0||Pe()?u:s`<button type="button" id="topping-back" @click=${en}>Bring the topping back</button>`}function Yr(){return s`${Df()} ${eo("pipe")}
    <p class="choice"><button type="button" @click=${xf}>Take the topping away</button></p>`}function Qr(e){return s`<h3>How large is the topping?</h3>
    ${L("run","/pipe")}
    <p class="hint">Weighed trials count before beads, beads before an outline; what you give besides is compared.</p>
    <div class="items">
      ${_e({at:"/pipe/trials",name:"the trials",title:"Trials piped on paper",add:"Weigh trials piped on paper",blank:{weighed:[""],weigh_cup:tp},body:Tf})}
      ${_e({at:"/pipe/envelope",name:"the outline",title:"Its outline",add:"Measure its outline",blank:{form:"",diameter:"",height:"",solidity:""},body:Sf})}
    </div>
    ${_e({at:"/pipe/beads",name:"the beads",title:"Beads from a tip",add:"Reckon it from tip and moves",blank:Yu,body:()=>Qu(e)})}
    ${e?Pf(e):u}`}function Tf(){let e={at:"/pipe/trials/weighed",least:1};return s`<div class="trials">
      ${x(e).map((t,n)=>s`<div class="row" id=${I(e,n)}>
            ${m({label:`Trial ${n+1}`,at:`${e.at}/${n}`,unit:"g",short:!0})}
            ${J(e,n,`trial ${n+1}`)}
          </div>`)}
    </div>
    ${z(e,"One more trial",()=>N(e,"","trial"))}
    <div class="row">
      ${m({label:"Weigh-cup of the trials, net",at:"/pipe/trials/weigh_cup/net",unit:"g"})}
      ${m({label:"Cup holds",at:"/pipe/trials/weigh_cup/holds",unit:"ml",short:!0})}
    </div>
    ${L("run","/pipe/trials/weigh_cup")}`}function Sf(){let e="/pipe/envelope",t=_("run",`${e}/form`);return s`${w({question:"Form of the outline",at:`${e}/form`,chosen:t,answers:[["cone","Cone"],["dome","Dome"]],puts:n=>n})}
    <div class="row">
      ${m({label:"Across",at:`${e}/diameter`,unit:"mm",short:!0})}
      ${m({label:"High",at:`${e}/height`,unit:"mm",short:!0})}
      ${m({label:"Solid share",at:`${e}/solidity`,unit:"%",short:!0,hint:"Topping, not air between its ridges."})}
    </div>`}var Rf={trials:"By weighed trials",beads:"By beads",envelope:"By its outline"};function Pf(e){let t=e.visible_by;if(!t)return u;let n=["trials","beads","envelope"].map(i=>({way:i,ml:t[`${i}_ml`]})).filter(i=>typeof i.ml=="number"),o=i=>n.length<2?void 0:i===0?"this one counts":"for comparison";return s`<h4>${n.length<2?"So the visible shape is":"The ways compared, visible shape alone"}</h4>
    ${n.map(({way:i,ml:r},l)=>k({key:`pipe.by.${i}`,label:Rf[i],note:o(l),shown:ne(a.units,r),sum:Nu(e,i)}))}
    ${Af(e)}`}function Af(e){let t=e.visible_by?.hand_suggested;if(!t||a.is_old)return u;let n=$(t.factor,2),o="/pipe/beads/tip/hand",i=typeof _("run","/pipe/beads/tip")=="object",r=i&&g(a.run.now,`${o}/factor`)!==t.factor,l=()=>Q("run","hand's factor kept",o,{factor:t.factor,trials:t.trials});return s`<p>
      Your hand lays down ${n} times the computed beads (${t.trials}
      ${t.trials===1?"trial":"trials"}): keep that as the tip's hand
      factor${i?"":", in your file of tips or by measuring the tip as your own"}.
    </p>
    ${r?s`<button type="button" @click=${l}>Keep ${n} for my tip</button>`:u}`}function Zr(e){return s`<h3>The whip planned for</h3>
    <div class="row">
      ${m({label:"Weigh-cup, net",at:"/pipe/whip/net",unit:"g"})}
      ${m({label:"Cup holds",at:"/pipe/whip/holds",unit:"ml",short:!0})}
    </div>
    ${L("run","/pipe/whip")}
    ${m({label:"One bag holds",at:"/pipe/bag_holds",unit:"ml",optional:!0,hint:e?.loads?`${e.loads} bag loads`:void 0})}`}function ip(){return s`<h3>What is lost of it</h3>
    <div class="row">${Xn("pipe")}</div>`}function Df(){let e=(n,o,i,r=!1)=>m({label:n,at:o,unit:i,optional:r,short:!0});return P({name:"vessels",pointers:["/pipe/bowl","/pipe/pace","/pipe/lye_spoon"],summary:"Bowl, pace, lye by the spoon",body:()=>s` <div class="items">
        ${_e({at:"/pipe/bowl",name:"the bowl",title:"The bowl",add:"Say what the bowl holds",blank:{holds:""},body:()=>s`<div class="row">
              ${e("Bowl holds","/pipe/bowl/holds","l")}
              ${e("Least the whisk catches, unwhipped","/pipe/bowl/whisk_catches","ml",!0)}
            </div>`})}
        ${_e({at:"/pipe/pace",name:"the pace",title:"The pace",add:"Say how fast you pipe",blank:{stays_open:"",each:""},body:()=>s`<div class="row">
              ${e("Can be piped for","/pipe/pace/stays_open","min")}
              ${e("To pipe one","/pipe/pace/each","s")}
              ${e("To change the bag","/pipe/pace/bag_change","s",!0)}
            </div>`})}
        ${_e({at:"/pipe/lye_spoon",name:"the lye spoon",title:"Lye by the spoon",add:"Lye is whipped in by the spoon",blank:{holds:"",each:""},body:()=>s`<div class="row">
              ${e("Spoon holds","/pipe/lye_spoon/holds","ml")}
              ${e("From one spoonful to the next","/pipe/lye_spoon/each","s")}
            </div>`})}
      </div>`})}var[sp,es]=[440,270],[to,Xr,si,yn]=[64,sp-10,10,es-52],Of=6,Ff=8;function rp(e){let t=e/Of,n=10**Math.floor(Math.log10(t)),o=[1,2,5,10].map(i=>i*n).find(i=>i>=t);return Array.from({length:Math.floor(e/o+1e-9)+1},(i,r)=>r*o)}var vn=e=>$(e,1);function ap(e,t){let n=e.at(-1)?.depth_mm??1,o=e.at(-1)?.volume_ml??1,i=p=>vn(to+(Xr-to)*p/n),r=p=>vn(yn-(yn-si)*p/o),l=e.map(({depth_mm:p,volume_ml:c})=>`L${i(p)} ${r(c)}`).join("");return s`<svg
      class="level-curve"
      viewBox="0 0 ${sp} ${es}"
      role="img"
      aria-label="Level curve: volume by depth, with the pour line at ${t} millimetres"
    >
      ${rp(n).map(p=>W`<path class="grid" d="M${i(p)} ${si}V${yn}" />
            <text x=${i(p)} y=${yn+20} text-anchor="middle">${vn(p)}</text>`)}
      ${rp(o).map(p=>W`<path class="grid" d="M${to} ${r(p)}H${Xr}" />
            <text x=${to-8} y=${r(p)} text-anchor="end" dominant-baseline="middle">${vn(p)}</text>`)}
      ${W`<text x=${(to+Xr)/2} y=${es-6} text-anchor="middle">depth, mm</text>
        <text transform="translate(16 ${(si+yn)/2}) rotate(-90)" text-anchor="middle">volume, ml</text>
        <path class="curve" d="M${i(0)} ${r(0)}${l}" />
        <path class="pour-line" d="M${i(t)} ${si}V${yn}" />`}
    </svg>
    ${Mf(e)}`}function Mf(e){let t=Math.max(1,Math.round(e.length/Ff)),n=e.filter((o,i)=>(i+1)%t===0);return s`<details>
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
              <th scope="row">${vn(o)}</th>
              <td>${vn(i)}</td>
              <td>${$(r,2)}</td>
            </tr>`)}
      </tbody>
    </table>
  </details>`}var Ie=e=>e===null?"not known":`${$(e,2)} mm`,$e=(e,t)=>{let n=H(t);return n==="not said"?[]:[[e,n,D]]};function lp(e,t){let n=t.heat;return{formula:"hottest lye: where its enthalpy is that of the cold water and the dry alkali together, all at once in a pot that takes none of it; cooling time = mass \xD7 heat capacity \xF7 (U \xD7 area) \xD7 ln((from \u2212 around) \xF7 (to \u2212 around))",with:[["strength",`${$(t.lye_strength_percent,1)} %`],["water at",`${n.water_at_c} \xB0C`],...$e("lye made at",`/${e}/warmth/lye_made_at`),...$e("lye used at",`/${e}/warmth/lye_used_at`),...$e("fats at",`/${e}/warmth/fats_at`),...$e("cooled in",`/${e}/warmth/cooled_in`)],sources:["NaOH: enthalpy and vapour pressure by Olsson, Jernqvist and Aly, Int. J. Thermophysics 18 (1997)","KOH: heat of solution at infinite dilution (CRC Handbook), which is too warm, never too cool","U: 50 to 300 W/(m\xB2 K) in water, 5 to 20 in air, by published coefficients of free convection; Newton's law of cooling"]}}function up(e){return{formula:"pieces = batter left after losses \xF7 (net weight \xF7 cup) \xF7 topping of one piece, rounded down; overrun = plain density \xF7 whipped density \u2212 1",with:[["batter",B(e.make_g)],["losses together",B(e.lost_g)],["cup holds",H("/pipe/whip/holds"),D],["topping of one piece",V(e.volume_each_ml)],["plain density",`${e.plain_density_computed_g_per_ml} g/ml`,"computed, before whipping"],["to pipe",String(e.pieces)]]}}function pp(e){return{formula:"piping = pieces \xD7 one piece + bag changes; least = what the whisk catches \xF7 plain batter of one piece; most = share of the bowl \xF7 whipped batter of one piece, and open time \xF7 one piece; spoonfuls = lye \xF7 spoon",with:[["pieces",String(e.pieces)],...$e("one piece takes","/pipe/pace/each"),...$e("a bag change","/pipe/pace/bag_change"),...e.loads?[["bag loads",String(e.loads),`bag of ${H("/pipe/bag_holds")}`]]:[],...$e("stays open","/pipe/pace/stays_open"),...$e("bowl holds","/pipe/bowl/holds"),...$e("whisk catches","/pipe/bowl/whisk_catches"),...$e("spoon holds","/pipe/lye_spoon/holds"),...$e("from one spoonful to the next","/pipe/lye_spoon/each")],sources:["how full a bowl may be whipped: common practice, no source"]}}function cp({on_top:e,buried:t},n){let o=`/perch/${n}`;return{formula:e?"it stands proud by its height less what is pressed in; it rests on a circle as large as its section at that depth":"cover = least distance between the surfaces of the embed and of wall, floor, pour line or next embed; pushed aside = its volume below the line",with:e?[...$e("pressed in",`${o}/on_top/sinks`),["of it below the top",V(e.sunk_ml)],["rests on a circle of",Ie(e.contact_mm)],["flat of the peak",Ie(e.peak_flat_mm),"by the topping's shape"]]:[...$e("cover wanted",`${o}/buried/cover`),...(t?.embeds??[]).map(({middle_mm:i,floor_cover_mm:r,wall_cover_mm:l,apart_mm:p},c)=>[`${c+1}. middle at ${i.map(d=>$(d,1)).join(", ")} mm`,`floor ${Ie(r)}, wall ${Ie(l)}`,p===null?"":`next one ${Ie(p)}`])],sources:["measured between the facets of mould and embed as they are drawn"]}}function mp(){let{gauge:e}=a.measured,t=e.pockets[0];return{formula:"to the brim = area of the level section, summed from floor to brim; of a mesh by the signed tetrahedra of its facets (divergence theorem); with water = net weight \xF7 density of water",with:[["one cavity",V(t.brimful_ml)],["floor",Ie(t.floor_mm)],["brim",Ie(t.brim_mm)],["opening",`${$(t.opening_cm2,2)} cm\xB2`],["cavities",String(e.pockets.length)],["all of them",V(e.total_ml)]],sources:ti()}}function dp(e){let t=e.piece.size;return{formula:"the box that the model of base, topping and decoration just fits, standing as it was poured",with:[["wide",Ie(t.width_mm)],["deep",Ie(t.depth_mm)],["high",Ie(t.height_mm)],["of it base to the pour line",Ie(e.pour.depth_mm)]]}}var Ae={at:"/perch"},ai=e=>`${Ae.at}/${e}`,zt=e=>E("run",`${ai(e)}/name`).trim()||`Decoration ${e+1}`,pe=()=>g(a.run.now,"/cut")!==void 0,li=e=>["mould","rod","drizzle"].find(t=>_("run",`${e}/${t}`)!==void 0),no=e=>["per_piece","per_cast"].find(t=>_("run",`${e}/${t}`)!==void 0);var be="/batch",kn="/pots",oo=e=>`${e}/moulds_owned`;function ts(){let e=[be,kn,oo("/pour")];return P({name:"batches",pointers:e,summary:`Batches, pots, moulds owned${Ef()}`,body:()=>s` <p class="hint">What you leave blank sets no limit.</p>
        ${L("run",be)} ${L("run",kn)}
        <div class="row">
          ${m({label:"Moulds like this owned",at:oo("/pour"),count:!0,optional:!0,short:!0,hint:"Else as many as the mould's own file says."})}
          ${m({label:"Pot for the base holds",at:`${kn}/holds`,unit:"l",optional:!0,takes_part:!0,short:!0,hint:"To the brim; filled to two thirds."})}
          ${m({label:"Lye jug holds",at:`${kn}/lye_jug`,unit:"l",optional:!0,takes_part:!0,short:!0,hint:"To the brim; filled to half."})}
          ${Lf()} ${Bf()}
        </div>
        ${w({question:"Cavities at each filling",at:be,asked_at:`${be}/fill`,chosen:_("run",`${be}/fill`)==="full"?"full":"needed",answers:[["needed","As many as are needed"],["full","All of them, the rest to stock"]],puts:t=>fp("fill",t==="full"?t:void 0)})}`})}function Ef(){let[e,t,n,o,i]=[`${be}/pieces`,`${be}/casts`,`${kn}/holds`,`${kn}/lye_jug`,oo("/pour")].map(l=>E("run",l)),r=[e&&`at most ${e} in a batch`,t&&`at most ${t} casts in a batch`,n&&`pot of ${n}`,o&&`lye jug of ${o}`,i&&te(Number(i),"mould")].filter(Boolean);return r.length?`: ${r.join(", ")}`:""}function fp(e,t){let n=q("run",be,[e]),o=t===void 0?n:{...n,[e]:t};return Object.keys(o).length?o:void 0}function Lf(){let e=_("run",`${be}/casts`)!==void 0,t=(n,o)=>m({label:o,at:`${be}/${n}`,count:!0,optional:!0,takes_part:!0,short:!0});return pe()?_("run",`${be}/pieces`)!==void 0?s`${t("pieces","Most bars in a batch")}
        <button type="button" @click=${If}>Count loaves instead</button>`:t("casts","Most loaves in a batch"):e?t("casts","Most casts in a batch"):t("pieces","Most pieces in a batch")}function If(){Q("run","Counted in loaves",be,fp("pieces",void 0))}function Bf(){let e=`${be}/whippings`;return!Pe()&&_("run",e)===void 0?u:m({label:"Whippings a batch",at:e,count:!0,optional:!0,takes_part:!0,short:!0,hint:"Each weighed out by itself; else one."})}var Wf=500,ns=()=>g(a.run.now,"/cut")===void 0&&(a.plan?.pour.brimful_ml??0)>=Wf;function Cf(){Q("run","Cut it into bars","/cut",{bar:{},kerf:""},Wt(Y("run","/cut/bar")))}function jf(){Q("run","Left whole","/cut",void 0,Re("cut-into-bars"))}function os(){return ns()?s`<div class="choice">
    <button type="button" id="cut-into-bars" @click=${Cf}>Cut it into bars</button>
  </div>`:u}var Nf={loaf:{thickness:""},slab:{length:"",width:""}};function zf(){let e=_("run","/cut/bar")??{};return"thickness"in e?"loaf":"length"in e||"width"in e?"slab":void 0}var Hf={loaf:[["","Along the longer side"],["x","Along x, across the drawing"],["y","Along y, away from you"],["z","Upwards: rounds off a column"]],slab:[["","Whichever gives more bars"],["x","Along x, across the drawing"],["y","Along y, away from you"]]};function ui(){let e=zf(),t=(o,i)=>m({label:o,at:`/cut/${i}`,unit:"mm",short:!0,optional:!0}),n=E("run","/cut/along");return s` ${w({question:"What is cut?",at:"/cut/bar",chosen:e,answers:[["loaf","A loaf, into slices"],["slab","A slab, into bars"]],puts:o=>Nf[o]})}
    <div class="row">
      ${e==="loaf"?m({label:"Bar, thickness",at:"/cut/bar/thickness",unit:"mm",short:!0}):u}
      ${e==="slab"?["length","width"].map(o=>m({label:`Bar, ${o}`,at:`/cut/bar/${o}`,unit:"mm",short:!0})):u}
      ${m({label:"Kerf of each cut",at:"/cut/kerf",unit:"mm",short:!0})}
      ${t("Off each end","end_trim")} ${t("Off each side","side_trim")}
      ${t("Planed off the top","top_planing")}
      ${t(e==="slab"?"Planed off each side of a bar":"Planed off both faces","face_planing")}
    </div>
    <p class="hint">The kerf is what each cut wastes: 0 mm for a wire.</p>
    ${e?w({question:e==="loaf"?"Slice follows slice":"The bars' length lies",at:"/cut/along",chosen:n,answers:Hf[e],puts:o=>o||void 0}):u}
    <button type="button" @click=${jf}>Leave it whole</button>`}var Uf=/put "confirmed": ("(?:[^"\\]|\\.)*")/;function Jf(e,t,n){let o=Uf.exec(n)?.[1];if(o===void 0)return;let i=JSON.parse(o),r=t==="/"?e:g(e,t),p=r!==null&&typeof r=="object"&&!Array.isArray(r)&&!/ beside "/.test(n)?t.replace(/^\/$/,""):t.slice(0,t.lastIndexOf("/")),c=g(e,`${p}/confirmed`),d=Array.isArray(c)?c:typeof c=="string"?[c]:[];return{pointer:`${p}/confirmed`,value:d.length?[...d,i]:i}}function pi(e,t,n,o){let i=Jf(e,t,n);return i?s`<button type="button" @click=${()=>o(i.pointer,i.value)}>It is really so: keep it</button>`:u}function rs(){let e="/lye_pot",t=_("run",`${e}/shared`)===!0;return!t&&!Pe()?u:s`${Fr(e,"Make one lye pot for both",t,{shared:!0})}
  ${t?m({label:"The empty pot weighs",at:`${e}/pot_tare`,unit:"g",optional:!0,hint:"If you know it, you are told what the full pot is to weigh."}):u}`}function hp(){return s`<section class="shelf" aria-labelledby="extras-title">
    <h2 id="extras-title">Pot, bottles, label</h2>
    ${rs()} ${ss()} ${as()}
  </section>`}function ss(e){let t={at:"/bottles"},n=x(t);return P({name:"bottles",pointers:[t.at],summary:"Bottles of fragrance to use up",is_needed:n.length>0,body:()=>s` <p class="hint">
          A whole bottle is shared over the batters at one rate, never by
          halves.${e&&he(e)?` Weights are of ${he(e)}.`:""}
        </p>
        ${n.map((o,i)=>{let r=`${t.at}/${i}`,l=String(o.name)||`bottle ${i+1}`;return s`<div class="part" id=${I(t,i)} role="group" aria-label=${l}>
            <div class="part-head">
              <p class="part-title">${l}</p>
              ${J(t,i,l)}
            </div>
            ${L("run",r)} ${L("run",`${r}/shared`)}
            <div class="row">
              ${m({label:"Fragrance, as in the formulas",at:`${r}/name`})}
              ${m({label:"The bottle holds",at:`${r}/holds`,unit:"g",short:!0})}
            </div>
            ${e?qf(e,i,l):u}
          </div>`})}
        ${z(t,"Use up a bottle",()=>N(t,{name:"",holds:"",shared:"by rate"},"bottle"))}`})}function qf(e,t,n){let o=e.bottles?.[t];return o?.name!==n?u:o.parts.map((i,r)=>k({key:`bottle.${t}.${r}`,label:`Into the ${i.part.toLowerCase()}`,note:`${$(i.percent_of_batter,2)} % of the batter`,shown:j(a.units,re(i,"")),size:"weigh",sum:ju(e,t,r)}))}function as(){return _e({at:"/label",name:"the label",title:"For the label",add:"Draft the label",blank:{market:""},body:Kf})}function Kf(){let e=_("run","/label/market"),t=_("run","/label/weighed")===void 0?"said":"weighed";return s`${w({question:"Where it is sold",at:"/label",asked_at:"/label/market",chosen:e,answers:[["EU","In the EU"],["US","In the US"]],puts:Vf})}
  ${w({question:"How much pieces differ",at:"/label",is_told_elsewhere:!0,chosen:t,answers:[["weighed","I have weighed finished pieces"],["said","I say how much they differ"]],puts:Gf})}
  ${t==="weighed"?Yf():s`<div class="row">
          ${m({label:"Heavier or lighter by",at:"/label/spread",optional:!0,short:!0,hint:"Such as 2 g or 3 %."})}
          ${m({label:"Pour line higher or lower by",at:"/label/pour_line",unit:"mm",optional:!0,short:!0})}
        </div>`}
  ${m({label:"Your labels already say",at:"/label/states",unit:"g",optional:!0,hint:"It is held against the pieces."})}
  ${e==="EU"||_("run",is)!==void 0?Fr(is,"With the e mark",_("run",is)===!0,!0):u}`}var is="/label/e_mark";function Vf(e){return{...q("run","/label",e==="EU"?[]:["e_mark"]),market:e}}function Gf(e){let t=q("run","/label",["weighed","spread","pour_line"]);return e==="weighed"?{...t,weighed:["","",""]}:t}function Yf(){let e={at:"/label/weighed",least:3};return s`<div class="trials">
      ${x(e).map((t,n)=>s`<div class="row" id=${I(e,n)}>
            ${m({label:`Piece ${n+1}`,at:`${e.at}/${n}`,unit:"g",short:!0})}
            ${J(e,n,`piece ${n+1}`)}
          </div>`)}
    </div>
    ${z(e,"One more piece",()=>N(e,"","piece"))}`}function $t(e){let{whole:t,batch:n}=e,o=Ll(t,n);return s`<h3 class="batch-head of-plan ${pn(t)?"of-sizes":""}">
      One batch: ${de(t,n)}${o?s`<span>, ${o}</span>`:u}
    </h3>
    ${pn(t)?s`<div class="sizes">
            ${ue("Which batch is weighed",String(Tr(t)),t.batches.map((i,r)=>[String(r),de(t,i)+(i.count>1?`, ${Ze(i.count)}`:"")]),Qf)}
          </div>`:u}`}function Qf(e){let t=a.plan;h({batch:Number(e)}),je(`One batch: ${de(t,t.batches[a.batch])}`)}function gp(e){let{batches:t,fillings:n,cavities:o,to_stock:i}=e.pieces,r=e.batches.map(c=>`${pn(e)?`${c.count} of `:""}${de(e,c)}`),l=`Made in ${t} batches${pn(e)?": ":" of "}${Sr(r)}; ${Wo(n,o)}.`,p=e.batch_limits.filter(c=>c.sets);return s`<div class="batches-told of-plan">
    ${X(e)?s`<p><b>${l}</b></p>`:u}
    ${i>0?s`<p>
            ${te(i,e.cut?"bar":"piece")} beyond the order ${i===1?"goes":"go"} to
            stock.
          </p>`:u}
    ${p.length?s`<p><span class="called">What sets a batch:</span> ${p.map(c=>c.text).join(" ")}</p>`:u}
    ${e.around.length?s`<p><span class="called">One fewer, one more:</span> ${e.around.map(c=>c.text).join(" ")}</p>`:u}
  </div>`}var xn=e=>v(a.printing,e);function _p(e,t){let n=document.createElement("a");n.href=e,t(n),n.click()}async function $p(e){if(!a.printing.is_working){xn({is_working:!0,told:"Making it ..."});try{await Zf(),xn({told:await e()})}catch(t){xn({told:t instanceof Error?t.message:String(t)})}xn({is_working:!1})}}async function Zf(){await on();let e=Ye("run");if(e)throw new Error(`${e.file} changed underneath: say first which text is to stay.`)}var bt=(e,t)=>()=>$p(async()=>{let n=URL.createObjectURL(await Vt(t));return _p(n,o=>o.download=e),window.setTimeout(()=>URL.revokeObjectURL(n),6e4),`${e} is in your downloads.`}),Xf=e=>()=>$p(async()=>(_p(await ya(e),t=>Object.assign(t,{target:"_blank",rel:"noopener"})),"It is open in a tab of its own: print it there at 100 %, not fitted to the page.")),eh=e=>{xn({paper:e}),localStorage.setItem("paper",e)},th=e=>e.batches.flatMap(t=>t.numbers.map(n=>({number:n,one:t}))).sort((t,n)=>t.number-n.number);function bp(e){let{batch:t}=a.printing;return X(e)&&t<=e.pieces.batches?t:0}function nh(e){if(!X(e))return u;let t=bp(e),n=i=>xn({batch:Number(i.target.value)}),o=(i,r)=>s`<option value=${i} .selected=${ae(i===t)}>${r}</option>`;return s`<div class="row">
    <div class="field choose">
      <label for="sheet-batch">The sheet is for</label>
      <select id="sheet-batch" @change=${n}>
        ${o(0,"the whole run")}
        ${th(e).map(({number:i,one:r})=>o(i,`batch ${i} of ${e.pieces.batches}: ${de(e,r)}`))}
      </select>
    </div>
  </div>`}function wp(e){let{paper:t,is_working:n,told:o}=a.printing,i=a.run.file.split("/").at(-1).replace(/(\.run)?\.json$/,""),r={file:a.run.file,run:a.run.now},l=a.measured?.mould,p={file:l,"below-brim":`${e.pour.below_brim_mm} mm`},c=bp(e),d={plan:r,paper:t,...c?{batch:String(c)}:{}},f=(b,S,A="")=>s`<button type="button" class=${A} ?disabled=${n} @click=${()=>{S()}}>${b}</button>`;return s`<section class="out" aria-labelledby="out-title">
    <h2 id="out-title">To print and to keep</h2>
    <h3>The sheet for the bench</h3>
    ${ue("Paper",t,[["A4","A4"],["Letter","Letter"]],eh)}
    ${nh(e)}
    <div class="choice">
      ${f("Bench sheet, to print",Xf({kind:"sheet",...d}),"strong")}
      ${f("Bench sheet, PDF",bt(`${i}${c?` batch ${c}`:""}.pdf`,{kind:"sheet-pdf",...d}))}
    </div>
    <h3>For the label, the wall and the printer</h3>
    <div class="choice">
      ${e.label?f("Label draft",bt(`${i} label.txt`,{kind:"label",plan:r})):""}
      ${f("Drawing of the pour, true size",bt(`${i} pour.svg`,{kind:"picture",plan:r}))}
      ${f("Drawing of the piece",bt(`${i}.svg`,{kind:"piece",plan:r}))}
      ${f("Whole piece, GLB",bt(`${i}.glb`,{kind:"glb",plan:r}))}
      ${f("Whole piece, STL",bt(`${i}.stl`,{kind:"stl",plan:r}))}
      ${l?s`${f("Filled cavity, GLB",bt(`${i} cavity.glb`,{kind:"glb",gauge:p}))}
            ${f("Cavity, STL",bt(`${i} cavity.stl`,{kind:"stl",gauge:{file:l}}))}`:""}
    </div>
    <p role="status">
      ${o||`The drawing has the pour line ${T(se(a.units,e.pour.below_brim_mm))} below the brim.`}
    </p>
  </section>`}var vp=e=>e.map(t=>`M${t.map(([n,o])=>`${n.toFixed(2)} ${(-o).toFixed(2)}`).join("L")}Z`).join("");function kp(e,t){let n=t.brim-t.floor,o=e.pour.poured_to_mm??e.pour.depth_mm,i=e.perch?.find(c=>!c.buried&&c.cavity_fills>0),r=i?Sp(i):0,l=i?i.on_top?.stands_proud_mm??1.9*r:0,p=e.pipe?oh(e,t,n,l):0;return{brim:n,line:o,topping:p,ball:r,proud:l,top:Math.max(n,(e.pipe?n:o)+p+l)}}function oh(e,t,n,o){let i=cn(g(a.run.now,"/pipe/envelope/height"));if(i!==void 0)return i;let r=(e.piece.size?.height_mm??0)-n-o;if(r>1)return r;let[l,p]=ir(t,t.brim-.01),c=Math.PI/4*(p-l)**2;return 1500*e.pipe.visible_each_ml/c}function yp(e,t){let[n,o]=ir(e,e.brim-.01),i=(n+o)/2,r=3,l=f=>(o-n)/2*Math.sqrt(1-(f/(r+.3))**2),p=f=>-(t.brim+t.topping*f/r),c=(f,b,S)=>{let A=i+S*(Math.max(l(f),l(b))+(o-n)*.035);return`C${A} ${p(f)} ${A} ${p(b)} ${i+S*l(b)*(b?.94:1)} ${p(b)}`},d=`M${n} ${p(0)}`;for(let f=0;f<r;++f)d+=c(f,f+1,-1);d+=`L${i+l(r)*.94} ${p(r)}`;for(let f=r;f>0;--f)d+=c(f,f-1,1);return`${d}Z`}var io=(e,t)=>e===t?`shaded ${t}`:"plain";function Ht(e,t,n=u){let o=a.measured?.outline;if(!o)return s`<p class="drawing hint">${a.measuring_failed??"Reading the mould ..."}</p>`;let i=kp(t,o),r=o.right-o.left,l=Math.max(6,r*.1),p={x:o.left-l,y:-i.top-l,w:r+2*l,h:i.top+2*l};return s`<div class="drawing">
      <svg viewBox="${p.x} ${p.y} ${p.w} ${p.h}" role="img" aria-label=${mh(e,t)}>
        ${ih(e)} ${rh(e,t,o,i)} ${ah(e,t,o,i)} ${lh()}
        ${uh(e,t,o,i)} ${ch(e,t,o,i)}
        ${W`<line class="pour-line" x1=${p.x+1} x2=${p.x+p.w-1} y1=${-i.line} y2=${-i.line} />
        <line class="brim" x1=${p.x+1} x2=${o.left-1} y1=${-i.brim} y2=${-i.brim} />
        <line class="brim" x1=${o.right+1} x2=${p.x+p.w-1} y1=${-i.brim} y2=${-i.brim} />`}
      </svg>
      ${n}
    </div>
    ${e==="perch"&&ls(t)?s`<p class="hint">${ls(t)}</p>`:u}`}function xp(e,t){let n=a.measured.outline,o=kp(e,n),i=n.right-n.left,r=Math.max(6,i*.1),l=o.top+2*r;return{share:(o.top+r-t)/l,per_mm:1/l,w:i+2*r,h:l}}function ih(e){return W`<defs>
    <pattern id="hatch-${e}" width="2.4" height="2.4" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <line class="hatch" x1="0" y1="0" x2="0" y2="2.4" /></pattern>
    <pattern id="dots-${e}" width="2" height="2" patternUnits="userSpaceOnUse"><circle class="dot" cx="1" cy="1" r="0.35" /></pattern>
    <clipPath id="cavity-${e}"><path clip-rule="evenodd" d=${vp(Tp())} /></clipPath>
  </defs>`}function Tp(){let e=a.measured.outline;return e.loops.map(t=>t.map(([n,o])=>[n,o-e.floor]))}function rh(e,t,n,o){let i=e==="cut"?"pour":e,r=t.pour.layers??[],l=(r.length?r.map(p=>sh(p,n)):[[o.line,o.line]]).map(([p,c])=>`M${n.left} 0V${-p}L${n.right} ${-c}V0Z`);return W`<g clip-path="url(#cavity-${e})">${l.map((p,c)=>W`<path class="whole" d=${p} /><path class="${io(i,"pour")} band${c%3}" d=${p} />${i==="pour"&&c%2===0?W`<path fill="url(#hatch-${e})" d=${p} />`:u}`).reverse()}</g>`}function sh(e,t){let{surface:n,to_mm:o}=e;if(!n)return[o,o];let i=r=>n.over_origin_mm+n.rise_x*r+n.rise_y*t.cut_y;return[i(t.left),i(t.right)]}function ah(e,t,n,o){if(!t.pipe||o.line>=o.brim)return u;let i=Math.min(1,(parseFloat(String(g(a.run.now,"/pipe/fills_headspace")).replace(",","."))||0)/100),r=(n.right-n.left)*i,l=(n.left+n.right)/2;return W`<g clip-path="url(#cavity-${e})"><rect class=${io(e,"pipe")} x=${l-r/2} width=${r}
    y=${-o.brim} height=${o.brim-o.line} /></g>`}function lh(){return W`<path class="wall" fill-rule="evenodd" d=${vp(Tp())} />`}function uh(e,t,n,o){let i=(n.left+n.right)/2,r=t.pipe?o.brim:o.line,l=t.perch?.flatMap((p,c)=>(p.buried?.embeds??[]).map(d=>({embed:d,one:p,i:c})))??[];return W`
    ${t.pipe?W`<path class=${io(e,"pipe")} d=${yp(n,o)} />${e==="pipe"?W`<path fill="url(#dots-pipe)" d=${yp(n,o)} />`:u}`:u}
    ${o.ball?W`<circle class=${io(e,"perch")} cx=${i} cy=${-(r+o.topping+o.proud-o.ball)} r=${o.ball} />`:u}
    ${l.map(({embed:p,one:c,i:d})=>ph(io(e,"perch"),i,p,c,d))}`}function ph(e,t,n,o,i){let[r,l]=[t+n.middle_mm[0],n.middle_mm[2]],p=cn(g(a.run.now,`/perch/${i}/rod/diameter`)),c=cn(g(a.run.now,`/perch/${i}/rod/length`));if(!p||!c)return W`<circle class=${e} cx=${r} cy=${-l} r=${Sp(o)} />`;let[d,f]=[n.turn[0][0],n.turn[2][0]],b=Math.min(1,Math.hypot(d,f)),S=p/2*Math.sqrt(1-b*b),A=c*b+2*S,F=-180/Math.PI*Math.atan2(f,d);return W`<rect class=${e} x=${-A/2} y=${-p/2} width=${A} height=${p} rx=${S} ry=${S?p/2:0}
    transform="translate(${r} ${-l}) rotate(${F})" />`}var Sp=e=>Math.cbrt(3e3*e.volume_each_ml/(4*Math.PI));function ls(e){let t=(e.perch??[]).filter((n,o)=>g(a.run.now,`/perch/${o}/rod`)===void 0&&(n.buried||n.cavity_fills>0)).map(n=>n.name);return t.length?`Drawn as a ball of its volume, whatever its shape: ${t.join(", ")}.`:""}function ch(e,t,n,o){if(e!=="cut"||!t.cut)return u;let i=Math.max(t.cut.rows,t.cut.columns);return W`${Array.from({length:i-1},(r,l)=>{let p=n.left+(n.right-n.left)*(l+1)/i;return W`<line class="knife" x1=${p} x2=${p} y1=${-o.line} y2="0" />`})}`}function mh(e,t){let n=T(se(a.units,t.pour.below_brim_mm));return`The piece from the side, to scale; ${{pour:"the pour",pipe:"the topping",perch:"the decoration",cut:"the loaf with its cuts"}[e]} is shaded. Pour line ${n} below the brim. ${ls(t)}`.trim()}var dh={piece:{per_piece:""},surface:{on_surface:"",covered:"",lands:""}},Be={at:"/dust"},us=e=>E("run",`/dust/${e}/name`).trim()||`Dust ${e+1}`;function Rp(){N(Be,{name:""},"Dust")}function fh(e){return _("run",`${e}/per_piece`)!==void 0?"piece":_("run",`${e}/on_surface`)===void 0?void 0:"surface"}function Pp(e){let t=`/dust/${e}`,n=fh(t),o=us(e),i=r=>({...q("run",t,["per_piece","on_surface","covered","lands"]),...dh[r]});return s` ${m({label:"Which powder",at:`${t}/name`})}
  ${w({question:"How much of it?",at:t,chosen:n,answers:[["piece","Weighed for one piece"],["surface","By the surface it covers"]],puts:i})}
  ${n==="piece"?m({label:`${o}, for one piece`,at:`${t}/per_piece`,unit:"g",hint:"What misses it included."}):u}
  ${n==="surface"?s`<div class="row">
            ${m({label:"Lies where it covers",at:`${t}/on_surface`,unit:"mg/cm2",short:!0})}
            ${m({label:"Covered, of the surface",at:`${t}/covered`,unit:"%",short:!0})}
            ${m({label:"Lands, of what is dusted",at:`${t}/lands`,unit:"%",short:!0})}
          </div>
          <p class="hint">
            The surface is all that the air sees of the piece in its mould: topping, decoration, level batter.
          </p>`:u}
  ${gt("run",t,o)}`}var hh={"by number":{},on_top:{on_top:{sinks:""}},buried:{buried:{cover:""}}};function gh(e){return["on_top","buried"].find(t=>_("run",`${e}/${t}`)!==void 0)??"by number"}function Ap(e,t){let n=gh(e),o=i=>({...q("run",e,["on_top","buried"]),...hh[i]});return li(e)==="drizzle"?s`<p class="aside">A drizzle lies on the surface it covers.</p>`:P({name:`${e} where`,pointers:[`${e}/on_top`,`${e}/buried`],summary:"Where it goes",body:()=>s` ${w({question:"Where does it go?",at:e,is_told_elsewhere:!0,chosen:n,answers:[["on_top","On top, pressed in"],["buried","Buried in the pour"],["by number","Only counted"]],puts:o})}
      ${n==="on_top"?_h(`${e}/on_top`):n==="buried"?bh(e,t):s`<p class="aside">It is counted and weighed; how it sits is not looked at.</p>`}`})}function _h(e){return s`<div class="row">
      ${m({label:"Pressed into the top",at:`${e}/sinks`,unit:"mm"})}
      ${m({label:"Flat of the peak, across",at:`${e}/peak_flat`,unit:"mm",optional:!0})}
    </div>
    <p class="hint">
      Pressed in 0 mm, it is only set down. The flat of the peak is what it stands on, if you measured it.
    </p>
    ${Dp(e,"It is turned")}`}function Dp(e,t){let n=o=>m({label:`About ${o}`,at:`${e}/turn/${o}`,unit:"deg",optional:!0,short:!0});return P({name:`${e} turn`,pointers:[`${e}/turn`],summary:t,body:()=>s` <div class="row">${["x","y","z"].map(n)}</div>
        <p class="hint">Degrees about its middle, x first, from how it was cast. A rod lies along x.</p>`})}var $h=[["level","Find places: upright, at one height"],["layered","Find places: upright, in several levels"],["free","Find places: turned any way"],["said","I say where"]];function bh(e,t){let n=`${e}/buried`,o=_("run",`${n}/places`)!==void 0?"said":_("run",`${n}/find`),i=_("run",`${n}/set`);return s`${L("run",n)}
  ${m({label:"Cover wanted all round",at:`${n}/cover`,unit:"mm",hint:"Batter between it and wall, floor, pour line and the next one."})}
  ${w({question:"When is it set in?",at:`${n}/set`,chosen:i,answers:[["before the pour","Before the pour"],["pressed in after","Pressed in after"]],puts:r=>r})}
  ${w({question:"Where in the pour?",at:e,asked_at:`${n}/find`,chosen:o,answers:$h,puts:r=>wh(e,r)})}
  ${o==="said"?vh(e,t):u}`}var Op={x:"",y:"",height:""};function wh(e,t){let n=q("run",`${e}/buried`,["find","places"]);if(t!=="said")return{..._("run",e),buried:{...n,find:t}};let o=Number(_("run",`${e}/${no(e)}`)),i=Array.from({length:o>=1&&o<=50?o:1},()=>Op);return{...q("run",e,["per_piece","per_cast"]),[Fp(e)]:i.length,buried:{...n,places:i}}}var Fp=e=>pe()?"per_cast":no(e)??"per_piece";function yh(e){let t=(n,o)=>{let i=["per_piece","per_cast"].reduce((r,l)=>U(r,`${e}/${l}`,void 0),n);return U(i,`${e}/${Fp(e)}`,o)};return{at:`${e}/buried/places`,least:1,and:t}}function vh(e,t){let n=yh(e),o=x(n);return s`<p class="hint">
      From the cavity's middle to its own: x to the right in the drawing, y away from you, either below zero for the
      other side. The height is that of its lowest point above the cavity's.
    </p>
    ${o.map((i,r)=>{let l=`${n.at}/${r}`,p=c=>m({label:`Place ${r+1}: ${c}`,at:`${l}/${c}`,unit:"mm",short:!0});return s`<div class="part" id=${I(n,r)} role="group" aria-label="Place ${r+1} of ${zt(t)}">
        ${L("run",l)}
        <div class="row">
          ${p("x")} ${p("y")} ${p("height")} ${J(n,r,`place ${r+1} of ${zt(t)}`)}
        </div>
        ${Dp(l,`Place ${r+1} is turned`)}
      </div>`})}
    ${z(n,"Add a place",()=>N(n,Op,"Place"))}
    <p class="aside">${o.length} in each.</p>`}var Mp=e=>`${e} made`;function kh(){let e=ai(x(Ae).length),t=pe()?{}:{per_piece:""};for(let n of[Mp(e),`${e} where`])tu("run",n);N(Ae,{name:"",material:"",...t,density:"",spares:"",melt_loss:"",jug_film:""},"Decoration")}function ci(){let[e,t]=[x(Ae).length>0,x(Be).length>0];return s`<div class="choice">
    ${z(Ae,e?"Add another decoration":"Add a decoration",kh)}
    ${z(Be,t?"Add another dust":"Add a dust",Rp)}
  </div>`}function Ep(e){let t=ai(e);return s` ${L("run",t)} ${Rh(t)}
    <div class="row">
      ${xh(t)} ${m({label:"Spares",at:`${t}/spares`,unit:"%",short:!0})}
      ${m({label:"Melt lost",at:`${t}/melt_loss`,unit:"%",short:!0})}
      ${m({label:"Film in the jug",at:`${t}/jug_film`,unit:"g",short:!0})}
      ${m({label:"Density when set",at:`${t}/density`,unit:"g/ml",short:!0})}
    </div>
    ${Ap(t,e)} ${gt("run",t,zt(e))}`}function xh(e){let t=no(e),n=ct("run",`${e}/buried/places`).length;if(n&&n===_("run",`${e}/${t}`)&&!(pe()&&t==="per_piece"))return s``;let o=t==="per_cast"?pe()?"In each loaf":"In each cast":pe()?"On each bar":"On each piece",i=r=>({...q("run",e,["per_piece","per_cast"]),[r]:t?_("run",`${e}/${t}`):""});return s`${pe()?w({question:"Counted by",at:e,is_told_elsewhere:!0,chosen:t,answers:[["per_piece","Bar"],["per_cast","Whole loaf"]],puts:i}):u}
  ${t?m({label:o,at:`${e}/${t}`,count:!0,short:!0}):u}`}var Th={mould:{mould:"",fill:{below_brim:""}},rod:{rod:{diameter:"",length:""}},drizzle:{drizzle:{area:"",thickness:""}}};function Sh(e,t){let n=["mould","moulds_owned","fill","made_of","rod","drizzle",...t==="drizzle"?["on_top","buried"]:[]];return{...q("run",e,n),...Th[t]}}function Rh(e){let t=li(e),n=["name","material","mould","moulds_owned","fill","made_of","rod","drizzle","each_fill"].map(o=>`${e}/${o}`);return P({name:Mp(e),pointers:n,summary:"What it is and how it is made",is_needed:!t,body:()=>s` <div class="row">
          ${m({label:"What it is called",at:`${e}/name`})}
          ${m({label:"What is melted for it",at:`${e}/material`})}
        </div>
        <p class="hint">The price goes by what is melted.</p>
        ${w({question:"How is it made?",at:e,is_told_elsewhere:!0,chosen:t,answers:[["mould","Cast in a mould"],["rod","A round rod, cut to length"],["drizzle","Drizzled over"]],puts:o=>Sh(e,o)})}
        ${t?Ph[t](e):u}
        ${m({label:"To fill all trays once, setting included",at:`${e}/each_fill`,unit:"min",optional:!0})}`})}var Ph={mould:Ah,rod:e=>s`<div class="row">
      ${m({label:"Rod, across",at:`${e}/rod/diameter`,unit:"mm",short:!0})}
      ${m({label:"Rod, long",at:`${e}/rod/length`,unit:"mm",short:!0})}
    </div>`,drizzle:e=>s`<div class="row">
      ${m({label:"Area covered",at:`${e}/drizzle/area`,unit:"cm2",short:!0})}
      ${m({label:"Thick",at:`${e}/drizzle/thickness`,unit:"mm",short:!0})}
    </div>`};function Ah(e){let t=_("run",`${e}/fill/depth`)===void 0?"below_brim":"depth";return s`${Xe("Cast in",`${e}/mould`,a.files?.moulds)}
  ${m({label:"Trays like this owned",at:oo(e),count:!0,optional:!0,hint:"Else as many as the mould's own file says."})}
  ${w({question:"Filled to a line",at:`${e}/fill`,chosen:t,answers:[["below_brim","below the brim"],["depth","above the floor"]],puts:n=>({[n]:""})})}
  ${t==="below_brim"?m({label:"Filled to, below the brim",at:`${e}/fill/below_brim`,unit:"mm",hint:"0 mm is level full."}):m({label:"Filled to, above the floor",at:`${e}/fill/depth`,unit:"mm"})}
  ${w({question:"What makes one?",at:`${e}/made_of`,chosen:_("run",`${e}/made_of`),answers:[["one cast","One cast"],["two halves","Two halves, joined at the flat"]],puts:n=>n})}`}var Tn=()=>x(Ae).length+x(Be).length>0;function Lp(){return s`<section class="lane unused" aria-label="Perch">
    <h2>Perch</h2>
    <p>Nothing is set on or in it${ns()?", and it is left whole":""}.</p>
    ${ci()} ${os()}
  </section>`}function Ip(e,t,n,o){return e?.length===t.length?e[o]:e?.find(i=>i.name===n)}function Bp(e){let t=x(Ae).flatMap((n,o)=>{let i=Dh(e,o);return i?[{one:i,i:o}]:[]});return s`<div class="side">${t.map(({one:n})=>Oh(e,n))} ${Ht("perch",e)}</div>
    <div class="weights">
      ${t.map(({one:n,i:o})=>Fh(e,n,o))}
      ${e.dust?.length&&x(Be).length?s`${X(e.whole)?$t(e):u}
              <h3>Weigh for dusting</h3>`:u}
      ${x(Be).map((n,o)=>Eh(e,o))}
    </div>
    ${ps()}`}var Dh=(e,t)=>Ip(e.perch,x(Ae),E("run",`/perch/${t}/name`),t);function ps(){let e=(t,n,o,i)=>s`<section class="questions" id=${I(t,n)} aria-labelledby="${I(t,n)}-title">
      <div class="part-head">
        <h3 id="${I(t,n)}-title">${o}</h3>
        ${J(t,n,o)}
      </div>
      ${i}
    </section>`;return s`<div class="all-questions">
    ${x(Ae).map((t,n)=>e(Ae,n,zt(n),Ep(n)))}
    ${x(Be).map((t,n)=>e(Be,n,us(n),Pp(n)))} ${ci()} ${os()}
  </div>`}function Oh(e,t){let n=t.tray_fills>0?`, in ${t.tray_fills} tray ${t.tray_fills===1?"fill":"fills"}`:"";return s`<p class="order ${a.is_old?"old":""}">
    Cast <b>${t.casts}</b> of ${t.name} ahead${n}${X(e.whole)?", for the whole run":""}.
  </p>`}function Fh(e,t,n){return s`<h3>
      Weigh for ${t.name} ${X(e.whole)?s`<small>for the whole run</small>`:u}
    </h3>
    ${k({key:`perch.${n}.make`,label:`Melt of ${t.material}`,shown:j(a.units,re(t,"make_")),size:"weigh",sum:Jr(t,n)})}
    ${k({key:`perch.${n}.each`,label:"Each weighs",note:`${$(t.volume_each_ml,2)} ml`,shown:O(a.units,t.mass_each_g,2),sum:Jr(t,n)})}
    ${t.casting_s?s`<p>${mt(t.casting_s)} of casting.</p>`:u} ${Mh(t,n)}`}function Mh(e,t){let{on_top:n,buried:o}=e;if(!n&&!o)return u;let i=l=>l===null?"not known":T(se(a.units,l)),r=l=>{let p=(o?.embeds??[]).map(l).filter(c=>c!==null);return p.length?T(se(a.units,Math.min(...p))):"none near"};return s`<h4>Fit of ${e.name}</h4>
    <dl class="facts">
      ${n?s`<div>
                <dt>Rests on a circle of</dt>
                <dd>${i(n.contact_mm)}</dd>
              </div>
              <div>
                <dt>Flat of the peak</dt>
                <dd>${i(n.peak_flat_mm)}</dd>
              </div>
              <div>
                <dt>Stands proud by</dt>
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
                <dd>${$(o.displaced_ml,1)} ml</dd>
              </div>`:u}
    </dl>
    ${Ct(`perch.${t}.fit`,"How the fit is measured",cp(e,t))}`}function Eh(e,t){let n=Ip(e.dust,x(Be),E("run",`/dust/${t}/name`),t);if(!n)return u;let o=c=>E("run",`/dust/${t}/${c}`),i=_("run",`/dust/${t}/per_piece`)!==void 0,r=["pieces of the batch",String(e.batch.pieces)],l=n.exposed_cm2===0&&!i,p=k({key:`dust.${t}`,label:n.name,shown:j(a.units,re(n,"")),size:"weigh",sum:{formula:i?"powder = on one piece \xD7 pieces of the batch":"powder = on the surface \xD7 surface covered \xF7 share that lands \xD7 pieces of the batch",with:i?[["on one piece",o("per_piece"),"the run"],r]:[["on the surface",o("on_surface"),"the run"],["covered",o("covered")],["lands",o("lands")],r]}});return s`${p}${l?s`<p class="alarm">
          Nothing of a topping or a decoration sees the air, so it comes to nothing: say what is weighed for one piece.
        </p>`:u}`}function Wp(e){let{cut:t}=e;return s`<div class="side">
      ${t?s`<p class="order ${a.is_old?"old":""}">
              Cut <b>${t.bars_each} bars</b> from each, ${t.columns} by ${t.rows}.
            </p>`:u}
      ${Ht("cut",e)}
    </div>
    <div class="weights">
      ${t?s`${k({key:"cut.bar",label:"A bar on average, fresh",note:Lh(t),shown:O(a.units,e.piece.fresh_g),size:"weigh",sum:qr(t)})}
            ${k({key:"cut.offcuts",label:"Offcuts",shown:O(a.units,t.offcuts_g),sum:qr(t)})}
            ${Ih(t)}`:u}
    </div>
    <div class="all-questions">${ui()} ${Tn()?u:ci()}</div>`}function Lh(e){let t=e.bars.map(i=>i.fresh_g),n=Math.floor(Math.min(...t)*10)/10,o=Math.ceil(Math.max(...t)*10)/10;return`${$(n,1)} to ${$(o,1)} g`}function Ih(e){return e.one_more?.length?s`<ul class="limits">
    ${e.one_more.map(t=>s`<li>At ${t.size_text} ${t.direction} it gives ${t.bars} bars.</li>`)}
  </ul>`:u}var nt="/pour/layers",wt={at:nt,in_order:!0},cs=[["parts","Parts"],["depth","Thickness"],["mass","Weight in one"]],di=()=>x(wt);function Bh(){let e=t=>di().some(n=>t in n);return cs.map(([t])=>t).find(e)??(e("rest")?"depth":"parts")}function ms(e){let t=di(),n=Bh();return t.length?s`<h3>
      Layers, lowest first ${e&&he(e)?s`<small>${he(e)}</small>`:u}
    </h3>
    ${w({question:"All of them by",at:nt,is_told_elsewhere:!0,chosen:n,answers:cs,puts:o=>Ch(o,e)})}
    <div class="items">${t.map((o,i)=>jh(o,i,n,e))}</div>
    ${z(wt,"One more layer on top",()=>N(wt,{name:Wh(t),[n]:""},"layer"))}`:s`<p class="choice">
      ${z(wt,"Pour it in layers",()=>N(wt,{name:"Layer 1",parts:1},"layer"))}
    </p>`}function Wh(e){for(let t=e.length+1;;++t)if(!e.some(n=>n.name===`Layer ${t}`))return`Layer ${t}`}function Cp(e,t,n){let o=e?.pour.layers?.[n];return o?.name===t.name?o:void 0}function Ch(e,t){let n=di(),o=a.is_old?void 0:t,i=(r,l)=>{let p=Cp(o,r,l);return e==="parts"||!p||e==="depth"&&"propped"in r?"":e==="depth"?`${$(p.to_mm-p.from_mm,3)} mm`:`${$(p.mass_each_g,3)} g`};return n.map((r,l)=>{let p=mi(l),c=e!=="parts"&&n.length>1&&l===n.length-1;return{...p,...c?{rest:!0}:{[e]:i(r,l)}}})}var mi=e=>q("run",`${nt}/${e}`,[...cs.map(([t])=>t),"rest"]);function jh(e,t,n,o){let i=`${nt}/${t}`,r=String(e.name)||`Layer ${t+1}`,l=Cp(o,e,t);return s`<div class="part" id=${I(wt,t)} role="group" aria-label="Layer ${r}">
    ${l&&o?Nh(o,l,t):s`<p class="part-title">${r}</p>`} ${L("run",i)}
    ${Hh(e,t,n,r)}
    ${o&&l?l.colours.map((p,c)=>zh(o,l,p,t,c)):u}
    ${P({name:i,pointers:["name","colours","propped"].map(p=>`${i}/${p}`),summary:"Name, colours, prop",body:()=>s` ${m({label:"Name of the layer",at:`${i}/name`})} ${Kh(i,r)} ${Gh(i,t)}
        ${J(wt,t,r)}`})}
  </div>`}function Nh(e,t,n){return k({key:`pour.layer.${n}`,label:t.name,note:`${It(se(a.units,t.to_mm-t.from_mm))} thick, ${It(O(a.units,t.mass_each_g))} each`,shown:t.g_text===void 0?O(a.units,t.g):j(a.units,t),size:"weigh",sum:Pu(e.pour,t)})}function zh(e,t,n,o,i){return k({key:`pour.layer.${o}.${i}`,label:n.name,note:n.teaspoons?`about ${$(n.teaspoons,1)} tsp`:"",shown:Se(a.units,n),size:"weigh",sum:Mu(e.pour,t,n,`${nt}/${o}/colours/${i}`)})}function Hh(e,t,n,o){if(n==="parts")return Uh(e,t,o);let i="rest"in e;return s`${i?u:m({label:`${o}, ${n}`,at:`${nt}/${t}/${n}`,unit:n==="depth"?"mm":"g"})}
    <button
      type="button"
      aria-pressed=${i?"true":"false"}
      aria-label="${o} takes what is left"
      @click=${()=>i?qh(t,n):Jh(t,n)}
    >
      takes what is left
    </button>`}function Uh(e,t,n){let o=`${nt}/${t}/parts`,i=r=>()=>{h({typed:void 0}),Z("run",o,Math.max(1,(Number(e.parts)||0)+r))};return s`<div class="stepper parts-of">
    <button type="button" @click=${i(-1)} aria-label="One part less of ${n}">−</button>
    ${m({label:"Parts",at:o,number:!0})}
    <button type="button" @click=${i(1)} aria-label="One part more of ${n}">+</button>
  </div>`}function Jh(e,t){let n=di().map((o,i)=>i===e?{...mi(i),rest:!0}:o.rest?{...mi(i),[t]:""}:o);Q("run","takes what is left",nt,n)}function qh(e,t){let n=`${nt}/${e}`;Q("run","amount of the layer",n,{...mi(e),[t]:""},ht("run",`${n}/${t}`))}function Kh(e,t){let n={at:`${e}/colours`,in_order:!0};return s`${x(n).map((o,i)=>{let r=`${n.at}/${i}`,l=String(o.name)||`colour ${i+1}`;return s`<div class="part" id=${I(n,i)} role="group" aria-label="${l} in ${t}">
      <div class="part-head">
        <p class="part-title">Colour: ${l}</p>
        ${J(n,i,l)}
      </div>
      ${L("run",r)}
      <div class="row">
        ${m({label:"Colour",at:`${r}/name`})}
        ${m({label:"Rate",at:`${r}/rate`,hint:"Such as 4 g/kg of batter, 1 tsp/lb of fats."})}
        ${m({label:"Weight of a loose ml",at:`${r}/bulk_density`,unit:"g/ml",optional:!0,short:!0,hint:"Bulk density; needed for spoons."})}
      </div>
      ${gt("run",r,l)}
    </div>`})}
  ${z(n,"Add a colour",()=>N(n,{name:"",rate:""},"colour"))}`}var Vh=[["+x","+x, right in the drawing"],["-x","\u2212x, left in the drawing"],["+y","+y, behind it"],["-y","\u2212y, before it"]];function Gh(e,t){let n=`${e}/propped`,o=_("run",`${n}/low_side`);return t===x(wt).length-1&&_("run",n)===void 0?s`<p class="hint">The last layer is poured level.</p>`:_e({at:n,name:"the prop",title:"The mould is propped up",add:"Prop the mould up for this layer",blank:{angle:"",low_side:""},body:()=>s`${m({label:"Leans by",at:`${n}/angle`,unit:"\xB0",short:!0})}
        ${w({question:"Low side",at:`${n}/low_side`,is_told_elsewhere:!0,chosen:o,answers:Vh,puts:r=>r})}
        ${m({label:"Low side, or its direction",at:`${n}/low_side`,unit:"\xB0",short:!0,hint:"In degrees from +x towards +y, seen from above."})}
        <p class="hint">A thickness is then how far up the low wall the layer stands.</p>`})}var ot=()=>g(a.run.now,"/pour/line/depth")!==void 0?"depth":"below_brim";function ds(e,t){let n=e.pour.depth_mm+e.pour.below_brim_mm,o=Math.min(Math.max(0,Math.round(t*2)/2),Math.floor(n*2)/2-.5),i=ot()==="depth"?n-o:o;h({typed:void 0}),Z("run",`/pour/line/${ot()}`,`${$(i,2)} mm`)}function jp(e){let t=e.pour.depth_mm+e.pour.below_brim_mm,n=cn(g(a.run.now,`/pour/line/${ot()}`));return n===void 0?e.pour.below_brim_mm:ot()==="depth"?t-n:n}function Yh(e,t){let n=e.currentTarget,o=n.parentElement.querySelector("svg").getBoundingClientRect();n.setPointerCapture(e.pointerId);let i=l=>t((l.clientY-e.clientY)/o.height),r=()=>{n.removeEventListener("pointermove",i);for(let l of["pointerup","pointercancel"])n.removeEventListener(l,r)};n.addEventListener("pointermove",i);for(let l of["pointerup","pointercancel"])n.addEventListener(l,r)}function Qh(e){if(!a.measured)return u;let t=e.pour.depth_mm+e.pour.below_brim_mm,n=jp(e),{share:o,h:i}=xp(e,t-n),r=c=>Yh(c,d=>ds(e,n+d*i)),l=c=>{let d={ArrowUp:-1,ArrowDown:1,PageUp:-5,PageDown:5}[c.key];d!==void 0&&(c.preventDefault(),ds(e,n+d))},p=c=>c&&(c.style.top=`${100*o}%`);return queueMicrotask(()=>p(document.querySelector(".line-handle")??void 0)),s`<div
    class="line-handle"
    role="slider"
    tabindex="0"
    aria-label="Pour line below the brim"
    aria-valuemin="0"
    aria-valuemax=${Math.floor(t)}
    aria-valuenow=${$(n,1)}
    aria-orientation="vertical"
    aria-valuetext="${T(se(a.units,n))} below the brim"
    @pointerdown=${r}
    @keydown=${l}
  >
    <span aria-hidden="true">↕</span>
  </div>`}function Zh(e){let{pour:t}=e,n=T(se(a.units,t.below_brim_mm)),o=t.below_brim_mm<.05?"Pour to the brim":`Pour to ${n} below the brim`,i=e.cut?"the loaf":"each";return s`<p class="order ${a.is_old?"old":""}">
    ${o}, <b>${T(O(a.units,t.mass_each_g))}</b> ${i}.
  </p>`}function Np(e){let{pour:t}=e,n=o=>()=>ds(e,jp(e)+o);return s`<div class="side">
      ${Zh(e)} ${Ht("pour",e,Qh(e))} ${Hp(e)}
      <div class="stepper">
        <button type="button" @click=${n(-1)} aria-label="Pour line 1 mm higher">+ 1 mm</button>
        ${m({label:ot()==="depth"?"Deep":"Below brim",at:`/pour/line/${ot()}`,unit:"mm"})}
        <button type="button" @click=${n(1)} aria-label="Pour line 1 mm lower">− 1 mm</button>
      </div>
      ${k({key:"pour.mm",label:"1 mm is",shown:ne(a.units,t.ml_per_mm,2),note:`${Te(t.ml_per_mm*t.density_g_per_ml,1)} g at the line`,sum:Ru(t)})}
      ${k({key:"pour.each",label:"Weigh into each",shown:O(a.units,t.mass_each_g),size:"weigh",note:`${$(t.volume_each_ml,1)} ml`,sum:Su(t)})}
    </div>
    <div class="weights">
      ${$t(e)} ${fs("pour","Weigh for the base",t.formula)} ${hs("pour",t)}
      ${k({key:"pour.make",label:"Base to make",shown:O(a.units,t.make_g),size:"weigh",sum:ni("pour",t)})}
      ${k({key:"pour.density",label:"Density",shown:[`${t.density_g_per_ml} g/ml`,""],sum:oi("pour",t)})}
    </div>
    <div class="more">${ms(e)} ${eo("pour")}</div>`}function zp(){let e=ot();return s`<div class="side">
      ${Hp()} ${L("run","/pour/line")}
      ${m({label:e==="depth"?"Deep":"Below brim",at:`/pour/line/${e}`,unit:"mm"})}
    </div>
    <div class="more">${ms()} ${eo("pour")}</div>`}function Hp(e){let t=n=>{if(n===ot())return;let o=e&&!a.is_old?e.pour[n==="depth"?"depth_mm":"below_brim_mm"]:void 0;Q("run","pour line","/pour/line",{[n]:o===void 0?"":`${$(o,3)} mm`})};return ue("The pour line is measured",ot(),[["below_brim","From the brim"],["depth","From the floor"]],t)}function Xh(e){return e.teaspoons?`about ${$(e.teaspoons,1)} tsp`:""}function eg(e){let t=e.set_aside_for_colours_g?`${T(j(a.units,{g:e.set_aside_for_colours_g,scale_step_g:e.scale_step_g}))} of it for the colours`:"";return[Xh(e),t].filter(Boolean).join(", ")}function fs(e,t,n){return s`<div class="weigh-head">
    <h3>${t} <small>${n}</small></h3>
    <button
      type="button"
      @click=${()=>un(e)}
      aria-label="Change the formula ${e==="pour"?"of the base":"of the topping"}"
    >
      Change the formula
    </button>
  </div>`}function hs(e,t,n=e){return s`${Uo(t).map(({one:o,i})=>gs(e,t,o,i,n))}`}function gs(e,t,n,o,i=e){return k({key:`${i}.${o}`,label:n.name,note:eg(n),shown:Se(a.units,n),size:"weigh",sum:Fu(e,t,n)})}var tg=[0,50,80,100];function Up(e){let{pipe:t}=e;return t?s`<div class="side">
      <p class="order ${a.is_old?"old":""}">
        Pipe <b>${$(t.volume_each_ml,0)} ml</b> on each, ${T(O(a.units,t.mass_each_g))} at this
        whip.
      </p>
      ${Ht("pipe",e)}
      ${k({key:"pipe.each",label:"Topping on each",shown:ne(a.units,t.volume_each_ml),note:`${$(t.in_headspace_each_ml,1)} ml of it below the brim`,sum:Hu(t)})}
      ${og(e)} ${Kp()} ${lg(e)}
    </div>
    <div class="weights">
      ${$t(e)} ${fs("pipe","Weigh for the topping",t.formula)}
      ${e.whippings.map((n,o)=>ng(e,n,o))}
      ${k({key:"pipe.density",label:"Whipped density",note:`overrun ${$(t.overrun_percent,0)} %`,shown:[`${t.density_g_per_ml} g/ml`,""],sum:oi("pipe",t)})}
      ${Zr(t)}
    </div>
    <div class="more">${Qr(t)} ${Yr()}</div>`:$s()}var ro=e=>e===0?"pipe":`pipe.whipping${e}`;function _s(e,t){let n=Lt(e,t);return n?s`<h4 class="whipping">${n.replace(/^./,o=>o.toUpperCase())}</h4>`:u}function ng(e,t,n){let o=ro(n);return s`${_s(e,t)} ${hs("pipe",t,o)}
  ${k({key:`${o}.make`,label:"Topping to make",note:Lt(e,t),shown:O(a.units,t.make_g),size:"weigh",sum:ni("pipe",t)})}`}function $s(){return s`<div class="more">${Qr()}</div>
    <div class="side">${Kp()} ${_("run","/pipe/whip_now")===void 0?u:qp()}</div>
    <div class="weights">${Zr()} ${ip()}</div>
    <div class="more">${Yr()}</div>`}var Jp=e=>he(e)?s`<small>${he(e)}</small>`:u;function og(e){return s`<h3>This bowl, now ${Jp(e)}</h3>
    ${qp()} ${e.whippings.map((t,n)=>ig(e,t,n))}`}function ig(e,t,n){let o=t.pieces_now,i=o==null?0:t.pieces-o,r=i>0?`Short by ${i} at this whip.`:`Enough for the ${t.pieces} to make.`;return s`${_s(e,t)}
  ${o==null?u:k({key:`${ro(n)}.now`,label:"This bowl pipes now",note:r,shown:[te(o,"piece"),""],size:"weigh",sum:Uu(t)})}
  ${sg(t,n)}`}function qp(){let e={holds:_("run","/pipe/whip/holds")??"",net:""};return _e({at:"/pipe/whip_now",name:"today's weigh-cup",title:"Today's weigh-cup",add:"Weigh a cup of today's whip",blank:e,body:rg})}function rg(){return s`<div class="row">
    ${m({label:"Weigh-cup today, net",at:"/pipe/whip_now/net",unit:"g"})}
    ${m({label:"Cup holds",at:"/pipe/whip_now/holds",unit:"ml",short:!0})}
  </div>`}function sg(e,t){return e.readings?.length?s`<table class="readings">
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
        ${e.readings.map(n=>s`<tr class=${n.planned?"planned":""}>
              <th scope="row">${$(n.net_g,1)} g${n.planned?" (planned)":""}</th>
              <td>${$(n.overrun_percent,0)} %</td>
              <td>${n.pieces}</td>
            </tr>`)}
      </tbody>
    </table>
    ${Ct(`${ro(t)}.readings`,"How the table comes about",up(e))}`:u}function Kp(){let e="/pipe/fills_headspace",t=Number(/^\s*(\d+(?:[.,]\d+)?)\s*%/.exec(E("run",e))?.[1]?.replace(",",".")),n=He("run",e);return s`<h3 id="recess">How far does the topping fill the recess below the brim?</h3>
    <div class="choice pictures" role="group" aria-labelledby="recess">
      ${tg.map(o=>s`<button
            type="button"
            aria-pressed=${o===t?"true":"false"}
            @click=${()=>Z("run",e,`${o} %`)}
          >
            ${ag(o)}<span
              >${{0:"Not at all, 0 %",50:"Half, 50 %",80:"Mostly, 80 %",100:"Level, 100 %"}[o]}</span
            >
          </button>`)}
    </div>
    ${m({label:"Or as a share",at:e,unit:"%",hint:n?void 0:"A trial piped on flat paper misses this."})}`}function ag(e){let t=52*(e/100);return s`<svg viewBox="0 0 72 46" aria-hidden="true">
    ${W`
    <path class="plain" d="M10 26H62L57 44H15Z" /><rect class="shaded pipe" x=${36-t/2} y="18" width=${t} height="8" />
    <path class="shaded pipe" d="M12 18C6 12 14 8 20 9C20 2 30 2 36 1C42 2 52 2 52 9C58 8 66 12 60 18Z" />
    <path class="wall" d="M8 18L15 44H57L64 18" />`}
  </svg>`}function lg(e){let t=e.whippings.map(i=>({one:i,words:ug(i)})).filter(({words:i})=>i),n=e.whippings[0],o=n?.limits??[];return!n||!o.length&&!t.length?u:s`<h3>What this batter allows ${Jp(e)}</h3>
    ${t.map(({one:i,words:r})=>s`${_s(e,i)}
          <p>${r}.</p>`)}
    <ul class="limits">
      ${o.map(i=>s`<li class=${i.sets?"binds":""}>
            ${i.sets?s`<strong>Sets the batch: </strong>`:u}${i.text}
          </li>`)}
    </ul>
    ${Ct("pipe.limits","How the limits come about",pp(n))}`}function ug({piping_s:e,lye_spoonfuls:t}){return[e?`${mt(e)} of piping`:"",t?`${t.count} spoonfuls of lye, ${mt(t.altogether_s)}`:""].filter(Boolean).join("; ")}function Gp(e){if(!Bo(e))return u;let{whole:t}=e,{batches:n}=t.pieces,o=X(t)?`${te(n,"batch","batches")} together`:"all whippings together";return s`<section class="needs" aria-labelledby="needs-title">
    <h2 id="needs-title" tabindex="-1">To have ready for the whole run <small>${o}</small></h2>
    <p class="aside">To buy and to set out by, not to weigh by: each batch is weighed by itself.</p>
    <div class="jugs">
      ${Vp(e,"pour","The base, whole run")}
      ${t.pipe?Vp(e,"pipe","The topping, whole run"):u} ${mg(e)}
    </div>
  </section>`}var pg=e=>t=>t.name===e.name&&t.goes_into===e.goes_into;function cg(e,t,n){return(t==="pour"?[{batter:e.pour,words:""}]:(e.pipe?.whippings??[]).map(i=>({batter:i,words:e.pipe.whippings.length>1||i.count>1?`, whipping of ${i.pieces}, ${Ze(i.count)}`:""}))).flatMap(({batter:i,words:r})=>{let l=i.ingredients.find(pg(n));return l?[[r,T(Se(a.units,l))]]:[]})}function Vp(e,t,n){let{whole:o}=e,i=t==="pour"?o.pour:o.pipe,r=[...Uo(i),...fn(i)];return s`<div class="jug">
    <h3>${n} <small>${i.formula}</small></h3>
    ${r.map(({one:l,i:p})=>fi(`${t}.${p}`,l.name,Se(a.units,l),e,c=>cg(c,t,l)))}
    ${fi(`${t}.make`,t==="pour"?"Base in all":"Topping in all",O(a.units,i.make_g),e,l=>[["",T(O(a.units,l[t].make_g))]])}
  </div>`}var fi=(e,t,n,o,i)=>k({key:`needs.${e}`,label:t,shown:n,sum:Ku(o.whole,i)});function mg(e){let{whole:t}=e,n=(t.pour.layers??[]).flatMap((r,l)=>r.colours.map((p,c)=>({layer:r,one:p,i:l,j:c}))),o=t.dust??[];if(!n.length&&!o.length)return u;let i=r=>j(a.units,re(r,""));return s`<div class="jug">
    <h3>Colours and dust, whole run</h3>
    ${n.map(({layer:r,one:l,i:p,j:c})=>fi(`colour.${p}.${c}`,`${l.name}, for ${r.name}`,Se(a.units,l),e,d=>{let f=d.pour.layers?.[p]?.colours[c];return f?[["",T(Se(a.units,f))]]:[]}))}
    ${o.map((r,l)=>fi(`dust.${l}`,r.name,i(r),e,p=>{let c=p.dust?.[l];return c?[["",T(i(c))]]:[]}))}
  </div>`}function Qp(e){return s`<section class="shelf" aria-labelledby="shelf-title">
    <h2 id="shelf-title">Lye shelf</h2>
    ${$t(e)}
    <div class="jugs">
      ${Yp({slot:"pour",title:e.pipe?"Lye for the base":"Lye",batter:e.pour,pieces:e.batch.pieces,key:"pour"})}
      ${e.whippings.map((t,n)=>{let o=Lt(e,t);return Yp({slot:"pipe",title:`Lye for the topping${o&&`, ${o}`}`,batter:t,pieces:e.batch.pieces,key:ro(n)})})}
    </div>
    ${fg(e)} ${rs()} ${ss(e)}
  </section>`}function Yp({slot:e,title:t,batter:n,pieces:o,key:i}){let{effective:r}=n.superfat_percent,l=Et(e,o).length>0,p=`danger-${i.replaceAll(".","-")}`,c=i===e;return s`<div class="jug">
    <h3>${t} <small>${n.formula}</small></h3>
    ${fn(n).map(({one:d,i:f})=>gs(e,n,d,f,i))}
    ${k({key:`${i}.strength`,label:"Lye strength",note:`water ${$(n.water_to_pure_alkali,2)} : 1 to alkali; water ${$(n.water_percent_of_fats,1)} % of the fats`,shown:[`${$(n.lye_strength_percent,1)} %`,""],sum:zr(e,n)})}
    ${k({key:`${i}.superfat`,label:"Effective superfat",shown:[`${Me(r)}${l?" \u26A0":""}`,""],sum:Au(e,n)})}
    ${Gn(e,p,o)} ${Zp(n.superfat_percent)} ${dg(e,n,i)}
    ${!c||_(e,"/superfat")===void 0?u:m({label:"Superfat aimed at",of:e,at:"/superfat",unit:"%",described_by:l?p:void 0,hint:a.formulas[e]?.shipped?"Typing here makes a copy of the formula beside your run.":void 0})}
  </div>`}function Zp(e){let{low:t,high:n,likely_low:o,likely_high:i,doubts:r}=e,l=`It lies between ${Me(t)} and ${Me(n)}, as lots, purity and scales may fall`,p=o===void 0||i===void 0?".":`; nineteen batches in twenty between ${Me(o)} and ${Me(i)}.`,c=r?.[0],d=c?s` Most of the doubt is ${c.cause}: ${c.remedy}.`:u;return Rr(t)?s`<p class="mind of-plan">
    <strong>Mind</strong> At its lowest there is lye left over. ${l}${p}
    ${c?d:"A finer scale, a larger batch or a higher aim mends it."}
  </p>`:s`<p class="aside of-plan">${l}${p} Some fat is left over even at the lowest.${d}</p>`}function dg(e,t,n){return t.heat?s`${Xp(t.heat)}
  ${Ct(`${n}.heat`,"How the heat is reckoned",lp(e,t))}`:u}function Xp(e){let t=o=>T(ql(a.units,o)),n=e.cooling.map(o=>`${o.shortest_min*60?mt(o.shortest_min*60):"at once"} to ${mt(o.longest_min*60)} ${o.in?`in ${o.in.replace(/^in /,"")}`:""}`);return s`<p class="aside of-plan">
    Water at ${t(e.water_at_c)}: the lye may reach ${t(e.peak_c)}; it boils at
    ${t(e.boils_at_c)}.${n.length?` To cool: ${n.join("; ")}.`:""}${e.at_pour_c===null?"":` Lye and fats meet at about ${t(e.at_pour_c)}.`}
  </p>`}function fg(e){let t=e.lye_pot;if(!t)return u;let{units:n}=a,o=(i,r,l,p,c="")=>k({key:`pot.${i}`,label:r,note:c,shown:l,size:"weigh",sum:p});return s`<div class="jug">
    <h3>
      One pot for both
      <small>strength ${$(t.strength_percent,1)} %${he(e)&&`; ${he(e)}`}</small>
    </h3>
    ${o("water","In the pot: water, distilled",j(n,re(t,"water_")),Iu(e,t))}
    ${t.alkalis.map((i,r)=>o(`alkali.${r}`,`In the pot: ${i.name}`,j(n,re(i,""),"down"),Lu(e,i.name)))}
    ${o("lye","Lye in the pot",j(n,re(t,"lye_")),Bu(t),hg(t))}
    ${t.shares.map((i,r)=>s`${o(`share.${r}`,`Out of it for ${i.batter}`,j(n,re(i,"lye_"),"down"),Wu(e,t,r),`superfat then ${Me(i.superfat_percent)}`)}
        ${i.top_up_g>0?o(`top_up.${r}`,`and plain water to ${i.batter}`,j(n,re(i,"top_up_")),Cu(e,t,r)):u}
        ${Gn(r===0?"pour":"pipe","",e.batch.pieces)}
        ${i.superfat?Zp(i.superfat):u}`)}
    ${t.left_g?s`<p class="aside of-plan">
            ${T(j(a.units,{g:t.left_g,g_text:t.left_g_text,oz_text:t.left_oz_text}))} of lye
            is left in the pot, for the shares are rounded down.
          </p>`:u}
    ${t.heat?Xp(t.heat):u}
  </div>`}function hg(e){if(e.full_pot_g===null)return"";let{g_text:t,oz_text:n,...o}=re(e,"lye_"),i=j(a.units,{...o,g:e.full_pot_g,g_text:e.full_pot_g_text,oz_text:e.full_pot_oz_text});return`${T(i)} with the pot: make up with water to that after cooling`}var gg={danger:"\u26A0 Danger",stop:"Stop",warning:"Warning",caution:"Mind",note:"Note"};function ec(e){let t=r=>r.severity==="danger",n=[...e.cautions.filter(t),...e.cautions.filter(r=>!t(r))],o=r=>s`<ul>
      ${r.map(l=>s`<li class=${l.severity}><strong>${gg[l.severity]??l.severity}</strong> ${l.text}</li>`)}
    </ul>`,i=n.filter(r=>r.severity==="note");return s`<section class="watch" aria-labelledby="watch-title">
    <h2 id="watch-title">What to watch <small>worst first</small></h2>
    ${o(n.filter(r=>r.severity!=="note"))}
    ${i.length?s`<details ?open=${i.length<3}>
            <summary>${i.length} ${i.length===1?"note":"notes"}</summary>
            ${o(i)}
          </details>`:u}
  </section>`}function tc(e){let{cost:t,fresh_g:n,cured_g:o,label_g:i,lightest:r,size:l}=e.piece,p=r?"A bar on average, ":"",c=f=>p?p+f.toLowerCase():f,d=qu(e);return s`<section class="piece" aria-labelledby="piece-title">
    <h2 id="piece-title">The piece</h2>
    ${k({key:"piece.fresh",label:c("Fresh"),shown:O(a.units,n),sum:d})}
    ${o===null?u:k({key:"piece.cured",label:c("Cured"),shown:O(a.units,o),sum:d})}
    ${r?k({key:"piece.lightest",label:"The lightest bar",note:r.cured_g===null?"fresh":"cured",shown:O(a.units,r.cured_g??r.fresh_g),sum:d}):u}
    ${i===null?u:k({key:"piece.label",label:"Net weight for the label",shown:O(a.units,i,0),sum:d})}
    ${l?k({key:"piece.size",label:"Over all",shown:[`${[l.width_mm,l.depth_mm,l.height_mm].map(f=>$(f,0)).join(" \xD7 ")} mm`,""],sum:dp(e)}):u}
    ${t&&t.amount!==null?s`${k({key:"piece.cost",label:"Materials for one",shown:[`${t.amount} ${t.currency}`,""],size:"weigh",note:`${t.total} ${t.currency} for the run`,sum:Ju(e)})}
          ${t.unpriced.length?s`<p class="alarm">Unpriced, and not in this figure: ${t.unpriced.join(", ")}.</p>`:u}`:s`<p class="aside">No price of anything in it is given, so there is no cost.</p>`}
    ${$g(e)} ${_g(e)} ${as()}
  </section>`}function _g(e){let t=e.label;if(!t)return u;let n=(t.allergens??[]).filter(i=>i.named).map(i=>i.name),o=(i,r)=>r?s`<h3>${i}</h3>
          <p>${r}</p>`:u;return s`<details>
    <summary>Label draft, ${t.market}</summary>
    ${o("Net quantity",t.net_quantity?`${t.net_quantity.statement}: ${t.net_quantity.because}.`:"")}
    ${o("Ingredients, as saponified",t.as_saponified?.text)}
    ${o("Ingredients, as charged",t.as_charged?.text)} ${o("Allergens to name",n.join(", "))}
    <ul class="limits">
      ${(t.remarks??[]).map(i=>s`<li>${i.text}</li>`)}
    </ul>
  </details>`}function $g(e){let t=e.piece.cost?.materials.map(o=>o.name)??[];if(!t.length)return u;let n=o=>`/money/prices/${o.replaceAll("~","~0").replaceAll("/","~1")}`;return P({name:"prices",pointers:["/money/prices"],summary:"Prices paid",body:()=>s` ${t.map(o=>s`<div class="row">
            ${m({label:`${o}, paid`,at:`${n(o)}/paid`,optional:!0,short:!0})}
            ${m({label:`for (pack of ${o})`,at:`${n(o)}/for`,unit:"g",optional:!0,short:!0})}
          </div>`)}`})}function nc(e){let t=he(e);return s`<section class="losses" aria-labelledby="losses-title">
    <h2 id="losses-title">Losses and scales</h2>
    <p class="aside">
      ${t?`Of ${t}: in`:"In"} the pieces ${T(O(a.units,e.pour.in_pieces_g))} of base, lost
      ${T(O(a.units,e.pour.lost_g))}${e.pipe?`; of topping ${T(O(a.units,e.pipe.in_pieces_g))}, lost ${T(O(a.units,e.pipe.lost_g))}`:""}.
    </p>
    <div class="row">
      ${Xn("pour",e.pipe&&"Base")} ${e.pipe?Xn("pipe","Topping"):u}
    </div>
    <div class="row">
      ${m({label:"Large scale reads",at:"/scales/large/reads",unit:"g",short:!0})}
      ${m({label:"Large scale holds",at:"/scales/large/holds",unit:"g",short:!0})}
      ${m({label:"Fine scale reads",at:"/scales/fine/reads",unit:"g",short:!0})}
      ${m({label:"Fine scale holds",at:"/scales/fine/holds",unit:"g",short:!0})}
    </div>
  </section>`}function oc(e){let t=n=>()=>{h({units:n}),localStorage.setItem("units",n)};return s`<header>
    <p class="mark" aria-hidden="true">▽ Brimwright</p>
    ${a.view==="run"||a.view==="formula"?s`<div class="tools" role="group" aria-label="Tools">
              <button type="button" @click=${e}>Runs and moulds</button>
              <button type="button" ?disabled=${!a.past.length} @click=${en}>Undo</button>
              <button type="button" ?disabled=${!a.future.length} @click=${Po}>Redo</button>
            </div>
            <div class="tools" role="group" aria-label="Units">
              ${["metric","both","us"].map(n=>s`<button
                    type="button"
                    aria-pressed=${a.units===n?"true":"false"}
                    @click=${t(n)}
                  >
                    ${{metric:"g mm",both:"both",us:"oz in"}[n]}
                  </button>`)}
            </div>
            <p class="saving" role="status">${bg()}</p>`:u}
  </header>`}function bg(){let e=wg();if(e)return e;let{run:t}=a,n=a.formula_of==="apart"||!(K(t)||t.theirs||t.failed);return a.view==="formula"&&n?yg():t.theirs?"Not saved: say which is to stay.":t.failed?`Not saved: ${t.failed}`:K(t)?"Saving ...":t.shipped?"An example: your first change is saved as a copy.":`Saved in ${t.file}`}function wg(){let e=a.formulas.apart?"apart":"run",t=Ye(e);return t?`Not saved: ${t.file} changed underneath; say which is to stay.`:(e==="apart"?[a.formulas.apart]:[a.formulas.pour,a.formulas.pipe]).some(o=>o&&K(o))?a.complaint&&a.complaint.file===""?`Not saved: ${a.complaint.problem}`:"Saving ...":""}function yg(){let e=a.formulas[a.formula_of];return e?e.shipped?"Came with the program: your first change is saved as a copy.":`Saved in ${e.file}`:""}function ic(){let{plan:e}=a,t=e&&Io(e);return s`
    ${Do().map(n=>hn(n))} ${bs()}
    ${e?Rg(e):s`<h1>${String(a.run.now.name??"")}</h1>`}
    ${e&&t?s`${Pg(t)} ${Qp(t)}
            <div class="beside">${ec(e)} ${tc(e)}</div>
            ${Gp(t)} ${nc(t)} ${Og(e)} ${wp(e)} ${vg(t)}`:s`<p class="hint">${a.complaint?"No figures until this is mended.":"Reading the run ..."}</p>
            ${kg()}`}
  `}function vg(e){let t=i=>()=>{let r=document.getElementById(i);r.tabIndex=-1,r.focus({preventScroll:!0}),r.scrollIntoView({block:"start"})},n=[["run-title","Top"],["lane-pour","Pour"],["lane-pipe","Pipe"],["lane-perch","Perch"],["lane-cut","Cut"],["shelf-title","Lye"],...wr()?[]:[["watch-title","Watch"]],["piece-title","Piece"],["needs-title","Needs"],["mould-title","Mould"],["out-title","Print"]],o={"lane-pipe":Pe(),"lane-cut":pe(),"lane-perch":Tn(),"needs-title":Bo(e)};return s`<nav class="parts" aria-label="Parts of this run">
    ${wr()?s`<button type="button" class="danger" @click=${t("watch-title")}>
            <span aria-hidden="true">⚠</span> Danger
          </button>`:u}${n.filter(([i])=>o[i]??!0).map(([i,r])=>s`<button type="button" @click=${t(i)}>${r}</button>`)}
  </nav>`}function kg(){return s`<div class="row">
      ${m({label:"Pieces to sell",at:"/sell",count:!0,short:!0})}
      ${m({label:"Spoilage",at:"/spoilage",unit:"%",short:!0})}
    </div>
    ${ts()} ${a.complaint?xg():u}`}function xg(){let e=Pe();return s`<div class="row">
      ${Xe("Mould","/pour/mould",a.files?.moulds)}
      ${Xe("Base","/pour/formula",a.files?.formulas)}
      ${e?Xe("Topping","/pipe/formula",a.files?.formulas):u}
    </div>
    <div class="lanes">
      ${yt("pour","Pour",zp())} ${e?yt("pipe","Pipe",$s()):u}
      ${Tn()?yt("perch","Perch",ps()):u}
      ${pe()?yt("cut","Cut",ui()):u}
    </div>
    ${hp()}`}function bs(){let e=a.complaint;return s`<div class="complaints" role="status">
    ${e?s`<p class="alarm">
              <strong>${a.plan?"The figures below are from before.":"No figures yet."}</strong>
              ${e.field?s`<code>${e.field}</code>: `:u}${ke(e)}
            </p>
            ${e.is_fault?s`<button type="button" @click=${ws}>Ask again</button>`:u}
            ${gn("run")?pi(a.run.now,e.field,e.remedy,(t,n)=>Z("run",t,n)):u}
            ${dt()&&document.activeElement!==dt()||rc()?s`<button type="button" @click=${Sg}>Go to the field</button>`:u}`:u}
  </div>`}function ws(){ee(),a.run.failed&&Fe()}var rc=()=>["pour","pipe"].find(e=>a.complaint?.file&&a.complaint.field&&gn(e));function Tg(e){un(e),requestAnimationFrame(()=>requestAnimationFrame(()=>dt()?.focus()))}function Sg(){let e=dt(),t=rc();e?Or(e):t&&Tg(t)}function Rg(e){let{sell:t,make:n,fillings:o,cavities:i,casts:r,batches:l}=e.pieces,p=X(e)?`${l} batches, ${te(o,"filling")}`:Wo(o,i);return s`<section class="order-of" aria-labelledby="run-title">
    <div>
      <h1 id="run-title">${e.run}</h1>
      ${typeof a.run.now.note=="string"?s`<p class="aside">${a.run.now.note}</p>`:u}
    </div>
    <div class="row">
      ${m({label:"Pieces to sell",at:"/sell",count:!0,short:!0})}
      ${m({label:"Spoilage",at:"/spoilage",unit:"%",short:!0})}
      ${Xe("Mould","/pour/mould",a.files?.moulds)}
      ${Xe("Base","/pour/formula",a.files?.formulas)}
      ${Pe()?Xe("Topping","/pipe/formula",a.files?.formulas):u}
      ${k({key:"pieces.make",label:e.cut?"Bars to make":"Pieces to make",note:r!==n?`${r} casts, ${p}`:p,shown:[String(n),t===n?"":`for ${t}`],size:"weigh",sum:Tu(e)})}
    </div>
    <div class="batches">${gp(e)} ${ts()}</div>
    <p class="aside">Tap a figure with = beside it to see how it comes about.</p>
  </section>`}function Pg(e){let t=Pe();return s`<div class="lanes">
    ${yt("pour","Pour",Np(e))} ${t?yt("pipe","Pipe",Up(e)):u}
    ${Tn()?yt("perch","Perch",Bp(e)):u}
    ${pe()?yt("cut","Cut",Wp(e)):u}
    ${t?u:Ag("Pipe","This run has no topping.","Add a topping",np,op())}
    ${Tn()||pe()?u:Lp()}
  </div>`}function yt(e,t,n){let o=a.folded.has(e);return s`<section class="lane ${e}" aria-labelledby="lane-${e}">
    <div class="lane-head">
      <h2 id="lane-${e}" tabindex="-1">${t}</h2>
      <button
        type="button"
        aria-expanded=${o?"false":"true"}
        aria-label="${o?"Unfold":"Fold"} ${t}"
        @click=${()=>Zt("folded",e)}
      >
        ${o?"Unfold":"Fold"}
      </button>
    </div>
    ${o?u:s`<div class="lane-body">${n}</div>`}
  </section>`}function Ag(e,t,n,o,i=u){return s`<section class="lane unused" aria-label=${e}>
    <h2>${e}</h2>
    <p>${t}</p>
    <button type="button" @click=${o}>${n}</button>${i}
  </section>`}function Dg(e,t){let n={words:"The mould, filled",of:{gauge:{file:t,"below-brim":`${e.pour.below_brim_mm} mm`}}},o={words:"The whole piece",of:{plan:{file:a.run.file,run:a.run.now}}};return e.pipe||e.perch?.length||e.pour.layers?.length?[o,n]:[n,o]}function Og(e){let{measured:t}=a;if(!t)return u;let n=t.gauge.pockets[0],o=t.gauge.notes;return s`<section class="mould" aria-labelledby="mould-title">
    <h2 id="mould-title">The mould <small>${e.pour.mould}</small></h2>
    ${k({key:"mould.brimful",label:"To the brim",note:`${T(se(a.units,n.brim_mm-n.floor_mm))} deep, ${t.gauge.pockets.length} ${t.gauge.pockets.length===1?"cavity":"cavities"}`,shown:ne(a.units,n.brimful_ml),sum:mp()})}
    <div class="beside">
      <figure>
        <figcaption>Volume by depth; the broken line is the pour line</figcaption>
        ${ap(n.levels,e.pour.depth_mm)}
      </figure>
      <figure>
        <figcaption>In the round</figcaption>
        <solid-panel .views=${Dg(e,t.mould)}></solid-panel>
      </figure>
    </div>
    ${o.length?s`<ul class="limits">
            ${o.map(i=>s`<li>${i.text}</li>`)}
          </ul>`:u}
  </section>`}var sc=()=>Do().map(e=>hn(e));function ac(){let e=a.formula_of,t=a.formulas[e];if(!t)return s`<h1 id="formula-title" tabindex="-1">Formula</h1>
      ${sc()}${bs()}
      <p>Reading the formula ...</p>
      ${vs(e)}`;let n=a.plan&&Io(a.plan),o=e==="pipe"?n?.whippings[0]:n?.pour;return s`${sc()}
    <h1 id="formula-title" tabindex="-1">${String(t.now.name||"A formula without a name")}</h1>
    <p class="aside">${Fg(e)}</p>
    <div class="choice">${vs(e)}${e==="apart"?Mg():u}</div>
    ${Eg(e,o,n)} ${Cg(e)} ${du(e)} ${_u(e,o)} ${bu(e)}
    ${nu(e)}
    <div class="choice">${vs(e)}</div>`}var ys=()=>String(a.run.now.name??a.run.file);function Fg(e){let t=a.formulas[e],n=t.shipped?" It came with the program: your first change makes a copy of it beside your runs.":"",o=a.formulas.pour===t&&a.formulas.pipe===t;return e==="apart"?`It lies open by itself; its figures are those of a base for "${ys()}".${n}`:o?`Base and topping of "${ys()}" are both made of it.${n}`:`${e==="pour"?"Base":"Topping"} of "${ys()}".${n}`}function vs(e){return s`<button type="button" class="strong" @click=${()=>{Yn()}}>
    ${e==="apart"?"Close the formula":"Back to the run"}
  </button>`}function Mg(){return s`<button type="button" @click=${()=>{xr("pour")}}>Use it as the base</button> ${Pe()?s`<button type="button" @click=${()=>{xr("pipe")}}>Use it as the topping</button>`:u}`}function Eg(e,t,n){return s`<section class="strip" aria-label="What comes of it">
    ${t&&n?s`<dl>
            ${[...Lg(e,n),...Ig(e,t)].map(([o,i])=>s`<div class=${a.is_old?"old":""}>
                  <dt>${o}</dt>
                  <dd><b>${i}</b></dd>
                </div>`)}
          </dl>`:u}
    ${Bg(e)}
  </section>`}function Lg(e,t){let n=e==="pipe"?Lt(t,t.whippings[0]).replace(/^one whipping: /,""):"";return n?[["For one whipping",n]]:X(t.whole)?[["For one batch",de(t.whole,t.batch)]]:[]}function Ig(e,t){let n=Et(e).length?" \u26A0":"";return[["Fats",T(O(a.units,t.fats_g))],["Superfat comes out at",`${Me(t.superfat_percent.effective)}${n}`],...fn(t).map(({one:o})=>[o.name,T(Se(a.units,o))])]}function Bg(e){let t=a.complaint;if(!t)return s`<div role="status"></div>`;let n=gn(e),o=n&&t.field!==""&&document.activeElement!==dt();return s`<div role="status" class="asks">
    <p class="alarm">
      <strong>${a.plan?"These figures are from before.":"No figures yet."}</strong>
      ${n?"":"Not about this formula: "}${Wg(t.field)}${ke(t)}
    </p>
    ${t.is_fault?s`<button type="button" @click=${ws}>Ask again</button>`:u}
    ${o?s`<button type="button" @click=${()=>dt()?.focus()}>Go to the field</button>`:u}
  </div>`}function Wg(e){let t=e.split("/").slice(1).map(n=>/^\d+$/.test(n)?` ${Number(n)+1}`:`, ${n.replaceAll("_"," ")}`);return t.length?`${t.join("").slice(2)}: `:""}function Cg(e){return s`<section class="card" aria-label="Name">
    ${m({label:"Name",of:e,at:"/name",wide:!0})}
    ${P({of:e,name:"note",pointers:["/note"],summary:"Your note",body:()=>m({label:"Note",of:e,at:"/note",optional:!0,wide:!0})})}
  </section>`}var ks=e=>v(a.new_formula,e);function lc(e){let{name:t,copied:n}=a.new_formula,o=[...a.files?.formulas??[]].sort((r,l)=>Number(r.shipped)-Number(l.shipped)),i=r=>()=>e(async()=>{await r(t.trim()),ks({name:"",copied:""})});return s`<section aria-labelledby="formulas-title">
    <h2 id="formulas-title">Formulas</h2>
    <ul class="cards">
      ${o.map(r=>s`<li>
            <button type="button" @click=${()=>e(()=>kr(r.file))}>
              <b>${r.name||r.file}</b><span>${r.shipped?"came with the program":r.file}</span>
            </button>
          </li>`)}
    </ul>
    <h3>A new formula</h3>
    <div class="row">
      <div class="field">
        <label for="new-formula">What you call it</label>
        <input
          id="new-formula"
          .value=${ae(t)}
          @input=${r=>ks({name:r.target.value})}
          autocomplete="off"
          spellcheck="false"
        />
      </div>
      <button type="button" ?disabled=${!t.trim()} @click=${i(Fl)}>Begin from blank</button>
    </div>
    <div class="row">
      <div class="field choose">
        <label for="copied-formula">Or as a copy of</label>
        <select
          id="copied-formula"
          @change=${r=>ks({copied:r.target.value})}
        >
          <option value="" .selected=${ae(n==="")}>choose ...</option>
          ${o.map(r=>s`<option value=${r.file} .selected=${ae(r.file===n)}>${r.name||r.file}</option>`)}
        </select>
      </div>
      <button
        type="button"
        ?disabled=${!t.trim()||!n}
        @click=${i(r=>Ml(n,r))}
      >
        Make the copy
      </button>
    </div>
    ${t.trim()?"":s`<p class="hint">A new formula needs a name first.</p>`}
  </section>`}var uc=(e,t=0)=>e.map(n=>`M${n.map(([o,i])=>`${o.toFixed(2)} ${(t-i).toFixed(2)}`).join("L")}Z`).join("");function jg({outline:e,above:t}){let n=Math.max(4,(e.right-e.left)*.06),o=t.flat().map(([,f])=>f),[i,r]=o.length?[Math.min(...o),Math.max(...o)]:[0,0],l=-e.brim-2*n+i,p=l-r-n,c=[e.left-n,p,e.right-e.left+2*n,-e.floor+n-p],d=(f,b)=>W`<path class="shaded pour" fill-rule="evenodd" d=${b} /><path class="wall ${f}" fill-rule="evenodd" d=${b} />`;return s`<div class="drawing tall">
    <svg
      viewBox=${c.join(" ")}
      role="img"
      aria-label="The cavity from above and, beneath it, cut through its middle and seen from the side, to one scale"
    >
      ${d("above",uc(t,l))}${d("side",uc(e.loops))}
    </svg>
  </div>`}function Sn(e,t=!1,n=[]){let o=n.length?s`<p class="hint" role="status">Still to be said: ${n.join(", ")}.</p>`:u;if(!e)return s`<p class="hint">The drawing and the volume stand here as soon as every measure is in.</p>
      ${o}`;let{gauge:i}=e,r=i.pockets[0];return s`${jg(e)}
    <p class="order ${t?"old":""}" role="status">
      Holds
      <b>${T(ne(a.units,r.brimful_ml))}</b>${i.pockets.length>1?s` in each of ${i.pockets.length}, ${T(ne(a.units,i.total_ml))} together`:u},
      ${T(se(a.units,r.brim_mm-r.floor_mm))} deep.
    </p>
    ${o}
    ${(i.measurements?.length??0)>1?s`<p class="aside">
            ${i.measurements.map(l=>`By ${l.by} ${T(ne(a.units,l.brimful_ml))}`).join("; ")}.
          </p>`:u}
    ${i.notes.length?s`<ul class="limits">
            ${i.notes.map(l=>s`<li>${l.text}</li>`)}
          </ul>`:u}`}var Ng={mm:"in",g:"oz","\xB0C":"\xB0F"},zg={mm:/^(mm|cm|m|in|inch|inches|ft|"|″|”)$/,g:/^(mg|g|kg|oz|lb|lbs)$/,"\xB0C":/^(°?C|°?F)$/,"\xB0":/^(°|deg|degrees?)$/,h:/^(min|h|hours?|d|days?)$/};function hi(e,t,n=""){let o=xs(e);if(o)return o.unit??"";let i=mn(g(R(),e));return zg[t]?.test(i)?i:n||(a.units==="us"?Ng[t]??t:t)}var gi=()=>h({typed:void 0}),Rn=e=>`d${e.replaceAll("/","-")}`,xs=e=>a.typed?.key===Rn(e)?a.typed:void 0,_i=e=>xs(e)?.text??String(g(R(),e)??"");function vt(e){let{complaint:t}=M();return t&&(t.field===e||t.field.startsWith(`${e}/`))?t.line:void 0}function Ts(e,t,n,o){let{pointer:i}=e,r=l=>{let p=l.target.value,c=e.unit?hi(i,e.unit,e.unit_before):"";h({typed:{key:Rn(i),text:p,unit:c}}),G(i,Hg(e,p,c))};return s`<input
    id=${Rn(i)}
    .value=${ae(_i(i))}
    @input=${r}
    @blur=${gi}
    @keydown=${n??u}
    autocomplete="off"
    spellcheck="false"
    inputmode=${e.count?"numeric":"text"}
    aria-label=${o??u}
    aria-describedby=${t??u}
    aria-invalid=${vt(i)?"true":"false"}
  />`}function Hg(e,t,n){if(!((e.optional||e.count)&&!t.trim()))return e.count&&/^\s*\d{1,6}\s*$/.test(t)?Number(t):n&&zo(t)?`${t.trim()} ${n}`:t}function we(e,t){let n=Rn(e.pointer),o=vt(e.pointer),i=Ug(e.pointer)??e.hint,r=e.unit?` (${hi(e.pointer,e.unit,e.unit_before)})`:"";return s`<div class="field ${e.wide?"wide":"short"} ${o?"wants":""}">
    <label for=${n}>${e.label}${r}</label> ${Ts(e,o||i?`${n}-said`:void 0,t)}
    ${ge(n,o,i)}
  </div>`}function Ug(e){let t=g(R(),e),n=xs(e);if(!(!n?.text.includes("/")||typeof t!="string"||t===n.text))return`taken as ${t}`}function $i(e){let t=e.toLowerCase(),{file:n,shipped:o}=M().open,i=o?"":n;return a.files?.moulds.find(r=>r.file!==i&&r.name.trim().toLowerCase()===t)?.file}async function so(e){let{open:t}=M();try{if(await jn(t),t.theirs)return void requestAnimationFrame(()=>window.scrollTo(0,0));h({files:await Kt()})}catch(n){if(!(n instanceof y))throw n;return cr(n)}a.run.file&&(ze(),ee()),e(t.file)}var We="/shape/points",pc=500,Pn=(e,t)=>`${We}/${e}/${t}`,cc=e=>Array.from({length:e.least},()=>({}));function mc(e){let t=fe(R(),We),n=qg(),{complaint:o}=M(),i=o?.field===We&&dc()===void 0?o.line:void 0;return s`<h3 id="points-title">Points</h3>
    <p class="hint">${e.words}</p>
    <div class="points" role="group" aria-labelledby="points-title">
      <div class="point head" aria-hidden="true">
        <span></span>${e.columns.map(r=>s`<span
              >${r.label} (${hi(Pn(-1,r.name),r.unit,fc(e,t.length,r.name))})</span
            >`)}
      </div>
      ${t.map((r,l)=>Jg(e,l,n))}
    </div>
    ${i?s`<p class="complaint">${i}</p>`:u}
    <button type="button" ?disabled=${t.length>=pc} @click=${()=>wi(e,t.length)}>Add a point</button>
    <p class="hint">
      Enter goes on, and adds a point after the last; Shift with Enter puts one in between; Backspace in an empty one
      takes it away.
    </p>`}function Jg(e,t,n){let o=n.has(t)?`point ${n.get(t)}`:"empty point",i=Kg(t),r=l=>{let{name:p,label:c,unit:d}=e.columns[l],f={label:c,pointer:Pn(t,p),unit:d,unit_before:fc(e,t,p)},b=`${c}, ${n.has(t)?o:`point ${t+1}`}`;return Ts(f,i?`point-${t}-said`:void 0,Vg(e,t,l),b)};return s`<div class="point ${i?"wants":""}">
    <span class="number">${n.get(t)??""}</span>${r(0)}${r(1)}
    <button type="button" tabindex="-1" aria-label="Put a point before ${o}" @click=${()=>wi(e,t)}>
      +
    </button>
    <button type="button" tabindex="-1" aria-label="Take ${o} away" @click=${()=>hc(e,t)}>×</button>
    ${i?s`<p id="point-${t}-said" class="complaint">${i}</p>`:u}
  </div>`}function qg(){let e=[...Qt(R()),...vo(R())].sort((t,n)=>t-n);return new Map(e.map((t,n)=>[t,n+1]))}function dc(){let e=/\bpoints? (\d+)/.exec(M().complaint?.line??"")?.[1];return e===void 0?void 0:Qt(R())[Number(e)-1]}function Kg(e){let t=M().complaint?.field===We&&dc()===e;return vt(`${We}/${e}`)??(t?M().complaint.line:void 0)}function fc(e,t,n){let o=(i,r)=>mn(g(R(),Pn(i,r)));for(let i=t-1;i>=0;--i)if(o(i,n))return o(i,n);return e.columns.map(({name:i})=>o(t,i)).find(Boolean)??""}function bi(e,t){queueMicrotask(()=>document.getElementById(Rn(Pn(e,t)))?.focus())}function wi(e,t){let n=[...fe(R(),We)];n.length>=pc||(n.splice(t,0,{}),gi(),G(We,n),bi(t,e.columns[0].name))}function hc(e,t,n=0){let o=fe(R(),We).filter((i,r)=>r!==t);gi(),G(We,o.length?o:[{}]),bi(Math.max(0,Math.min(t-(n?1:0),o.length-1)),e.columns[n].name)}function Vg(e,t,n){let[o,i]=e.columns.map(({name:r})=>r);return r=>{let l=!_i(Pn(t,o))&&!_i(Pn(t,i));if(r.key==="Enter"&&r.shiftKey)wi(e,t+1);else if(r.key==="Enter"&&n===0)bi(t,i);else if(r.key==="Enter"&&t+1<fe(R(),We).length)bi(t+1,o);else if(r.key==="Enter")wi(e,t+1);else if(r.key==="Backspace"&&l&&fe(R(),We).length>1)hc(e,t,t>0?1:0);else return;r.preventDefault()}}var Ss={weighings:[""]},Rs=/\.(3mf|gltf|glb)$/i;function yi(e){let t=lt(e);return t?{kind:e,points:cc(t)}:{kind:e}}var Gg=()=>G("/water",Ss),Ue=e=>Oe(R(),e),ao=()=>Bn(R());function gc(e){let{open:t,answer:n,is_old:o}=M();return s`${hn(t,()=>{so(e)})} ${Vl(t)}
    ${Ue("shape")&&Ue("mesh")?s`<p class="hint">The mesh is measured; its measures are a second opinion.</p>`:u}
    ${Ue("shape")?ue("Shape",ao(),Object.entries(Sa),Yg):u}
    <div class="beside ${lt(ao())?"rows":""}">
      <div>
        ${Ps()} ${Ue("shape")?Zg():u} ${Ue("mesh")?Xg():u}
        ${As()} ${Ue("water")?t_():u} ${o_()}
      </div>
      <div class="stays">${Sn(n,o,$c())} ${i_(e)}</div>
    </div>`}function Yg(e){let t={...M().shapes,[ao()]:R().shape};v(M(),{shapes:t,answer:void 0}),G("/shape",t[e]??yi(e))}function Qg(){let{shipped:e,file:t}=M().open;return e?a.files?.moulds.find(n=>n.file===t)?.name??t:void 0}function Ps(){let e=Qg();return we({label:"What you call it",pointer:"/name",wide:!0,hint:e?`${e} stays as it is in the catalogue; this becomes a mould of your own, under a name of its own.`:void 0})}function Zg(){let e=ao(),t=lt(e);return s`${Yt(e).length?s`<div class="row">
          ${Yt(e).map(n=>we({...n,pointer:`/shape/${n.name}`}))}
        </div>`:u}
  ${t?mc(t):u}`}function As(e=Ui(R())){return s`<div class="row">
      ${e?u:we({label:"Cavities in one mould",pointer:"/cavities",count:!0})}
      ${we({label:"Moulds you own",pointer:"/owned",count:!0,optional:!0})}
      ${we({label:"Unmould after",pointer:"/unmould_after",unit:"h",optional:!0})}
    </div>
    ${we({label:"Note",pointer:"/note",optional:!0,wide:!0})}`}var Ds=[["cavity","What is filled, or the piece"],["body","The mould with its pockets"],["skin","The mould's inner surface"]],Os=[["","As it is"],["+z","+z"],["+y","+y"],["-z","-z"],["-y","-y"],["+x","+x"],["-x","-x"]];function Xg(){let e=o=>String(g(R(),`/mesh/${o}`)??""),t=(o,i,r)=>{let l=vt(`/mesh/${i}`);return s`<h4>${o}</h4>
      ${ue(o,e(i),r,p=>G(`/mesh/${i}`,p||void 0))}
      ${l?s`<p class="complaint">${l}</p>`:u}`},n=vt("/mesh/file");return s`<h3>Its mesh <small>${e("file")}</small></h3>
    ${n?s`<p class="complaint">${n}</p>`:u}
    ${Rs.test(e("file"))&&!e("unit")?u:t("Unit of the file's numbers","unit",["mm","cm","m","in"].map(o=>[o,o]))}
    ${t("What it shows","role",Ds)} ${t("Which way is up","up",Os)}
    ${e("role")==="body"?e_():u}
    <div class="row">
      ${we({label:"Hollows to fill, by number",pointer:"/mesh/group",count:!0,optional:!0,hint:"Only where they differ in size."})}
      ${we({label:"Straight up, if it leans",pointer:"/mesh/leaning_up",optional:!0,hint:"x,y,z, such as 0.0523,0,0.9986"})}
    </div>`}function e_(){let e=g(R(),"/mesh/on_board")===!0?"yes":"no";return s`<h4>Open below, and stood on a board?</h4>
    ${ue("Stood on a board",e,[["no","No"],["yes","Yes, the board closes it"]],t=>G("/mesh/on_board",t==="yes"?!0:void 0))}`}function t_(){let e=g(R(),"/water/to"),t=e===void 0?void 0:e==="brim"?"brim":g(e,"/depth")!==void 0?"depth":"below_brim",n=r=>G("/water/to",r==="brim"?"brim":{[r]:""}),o=g(R(),"/water/of"),i=t===void 0||t==="brim"?vt("/water/to"):void 0;return s`<h3>Water weighed in it</h3>
    <p class="hint">
      The water alone, without the mould. It corrects the measures and cannot stand without them: it does not tell what
      a cavity holds to a pour line.
    </p>
    ${we({label:"Temperature of the water",pointer:"/water/temperature",unit:"\xB0C"})}
    <h4>Filled to</h4>
    ${ue("Filled to",t,[["brim","The brim"],["depth","A depth"],["below_brim","Below the brim"]],n)}
    ${i?s`<p class="complaint">${i}</p>`:u}
    ${t==="depth"?we({label:"Depth of the water",pointer:"/water/to/depth",unit:"mm"}):u}
    ${t==="below_brim"?we({label:"Water below the brim",pointer:"/water/to/below_brim",unit:"mm"}):u}
    <h4>Weighed in</h4>
    ${ue("Weighed in",o===void 0?void 0:String(o),[["each cavity","One cavity"],["all cavities","The whole mould"]],r=>G("/water/of",r))}
    <div class="row">
      ${fe(R(),"/water/weighings").map((r,l)=>we({label:`Water, round ${l+1}`,pointer:`/water/weighings/${l}`,unit:"g"},n_(l)))}
    </div>
    ${M().complaint?.field==="/water/weighings"?s`<p class="complaint">${M().complaint.line}</p>`:u}
    <button type="button" @click=${_c}>One more round</button>`}function _c(){let e=fe(R(),"/water/weighings").length;G(`/water/weighings/${e}`,""),queueMicrotask(()=>document.getElementById(`d-water-weighings-${e}`)?.focus())}var n_=e=>t=>{t.key==="Enter"&&(e+1===fe(R(),"/water/weighings").length?_c():document.getElementById(`d-water-weighings-${e+1}`)?.focus())};function o_(){let e=(t,n)=>s`<button type="button" @click=${n}>${t}</button>`;return s`<div class="choice">
    ${Ue("shape")?u:e("Add measures, as a second opinion",()=>G("/shape",yi("block")))}
    ${Ue("shape")&&Ue("mesh")?e("Leave the measures out",()=>G("/shape",void 0)):u}
    ${Ue("water")?e("Leave the water out",()=>G("/water",void 0)):e("Add weighed water",Gg)}
  </div>`}function $c(){let e=vo(R()).length;return e?[...Wn(R()),e===1?"the other number of a point":`the other numbers of ${e} points`]:Wn(R())}function i_(e){let t=String(R().name??"").trim(),n=$i(t),{open:o,answer:i,is_old:r,complaint:l}=M(),p=i&&!r&&!l&&!$c().length&&t&&!n,c=o.shipped?"":o.file;return s`<button type="button" class="strong" ?disabled=${!p} @click=${()=>{so(e)}}>
      ${c?"Save the change":"Use this mould"}
    </button>
    ${c?s`<p class="aside">It stays in ${c}.</p>`:u}
    ${t?u:s`<p class="hint">Give it a name first.</p>`} ${Fs(t,n)}
    ${l?s`<p class="alarm" role="status">${r_(l.field)}${l.line}</p>
            ${pi(R(),l.field,l.line,G)}`:u}`}var Fs=(e,t)=>t?s`<p class="complaint" role="status">
        Another mould is called ${e} already (${t}); give this one a name of its own.
      </p>`:u;function r_(e){let[,t]=/^\/shape\/points\/(\d+)/.exec(e)??[];if(t)return`Point ${Number(t)+1}: `;if(e==="/shape/points")return"";let n=Yt(ao()).find(({name:r})=>e===`/shape/${r}`);if(n)return`${n.label}: `;let i=document.getElementById(`d${e.replaceAll("/","-")}`)?.labels?.[0]?.textContent?.trim();return i?`${i}: `:e?`${e.slice(1).replaceAll("/",", ").replaceAll("_"," ")}: `:""}var s_=200*2**20;async function bc(e){if(!e)return;let t={name:e.name,share:0,sizes:[],is_measuring:!1,asked:0};if(h({mesh:t}),G("/name",e.name.replace(/\.\w+$/,"")),e.size>s_){let n=`${e.name} has ${Math.ceil(e.size/1048576)} MiB`;return v(t,{complaint:`${n}; 200 MiB is the most: export it with fewer facets`})}try{let n=await va(e,o=>v(t,{share:o}));v(t,{share:1,upload:n.file}),await yc(t)}catch(n){v(t,{complaint:n instanceof y?n.message:String(n)})}}async function yc(e){let t=e.asked+1;v(e,{asked:t,is_measuring:!0,complaint:void 0,answer:void 0});let{upload:n,unit:o,role:i,up:r}=e;try{let l=await tn({file:n,unit:o,role:i,up:r});t===e.asked&&v(e,{answer:l,is_measuring:!1})}catch(l){if(!(l instanceof y))throw l;if(t!==e.asked)return;let p=o?e.sizes:a_(l.complaint.problem),c=p.length&&!o?void 0:ke(l.complaint);v(e,{sizes:p,complaint:c,is_measuring:!1})}}function a_(e){return[...e.matchAll(/([\d.]+ x [\d.]+ x [\d.]+) (mm|cm|in)\b/g)].slice(0,3).map(([,t,n])=>[n,t.replaceAll(" x "," \xD7 ")])}function Ms(e,t){v(e,t),yc(e)}function vc(e,t){return s` <div class="drop" @dragover=${i=>i.preventDefault()} @drop=${i=>{i.preventDefault(),bc(i.dataTransfer?.files[0])}}>
      <label for="mesh-file">Drop a mesh file here, or choose one: STL, OBJ, PLY, OFF, 3MF, glTF or GLB</label>
      <input id="mesh-file" type="file" accept=".stl,.obj,.ply,.off,.3mf,.gltf,.glb" @change=${i=>{let r=i.target;bc(r.files?.[0]),r.value=""}} />
    </div>
    ${a.mesh?l_(a.mesh,e,t):u}`}function l_(e,t,n){let i=(e.sizes.length?e.sizes:[["mm",""],["cm",""],["in",""]]).map(([r,l])=>[r,l?`${r}: ${l} ${r}`:r]);return s` <h3>${e.name}</h3>
    ${e.share<1&&!e.complaint?s`<label for="sent">Sending, ${Math.round(100*e.share)} %</label
            ><progress id="sent" max="1" .value=${e.share}></progress>`:u}
    ${e.is_measuring?s`<p role="status">Measuring ...</p>`:u}
    ${e.upload&&!Rs.test(e.name)?s`<h4 id="unit-title">${e.unit?"Its unit":"Which size is it?"}</h4>
            ${ue("Unit of the file's numbers",e.unit,i,r=>Ms(e,{unit:r}))}`:u}
    ${e.complaint?s`<p class="alarm" role="alert">${e.complaint}</p>`:u}
    ${e.upload&&(e.unit||e.answer)?s`<h4>What it shows</h4>
            ${ue("Role",e.role??e.answer?.gauge.role,Ds,r=>Ms(e,{role:r}))}
            <h4>Which way is up</h4>
            ${ue("Up",e.up??"",Os,r=>Ms(e,{up:r||void 0}))}`:u}
    ${e.answer?s`${Sn(e.answer)} ${u_(e,t,n)}`:u}`}var kc=e=>e.answer.gauge.role!=="cavity"||e.answer.gauge.pockets.length>1;function u_(e,t,n){let o=String(R().name??"").trim(),i=$i(o),r=o&&!i&&!e.is_keeping;return s`${Ps()} ${As(kc(e))} ${Fs(o,i)}
    <div class="choice">
      <button type="button" class="strong" ?disabled=${!r} @click=${()=>wc(e,n,t)}>
        Use this mould
      </button>
      <button type="button" ?disabled=${e.is_keeping} @click=${()=>wc(e,n)}>
        Say more about it first
      </button>
    </div>
    ${e.is_keeping?s`<p role="status">Keeping it ...</p>`:u}
    <p class="hint">
      More is: water weighed in it, measures as a second opinion, a mesh that leans or stands on a board.
    </p>`}async function wc(e,t,n){v(e,{is_keeping:!0});try{let o=p_(e,await ka(e.upload,m_(e.name)));if(!n||e.answer.gauge.pockets.length>1&&!await c_(o))return t(o);nn(o,"mesh",M().title),await so(n),v(e,{complaint:a.mould?.complaint?.line})}catch(o){v(e,{complaint:o instanceof y?o.message:String(o)})}v(e,{is_keeping:!1})}function p_(e,t){let n={file:t,role:e.answer.gauge.role};e.unit&&(n.unit=e.unit),e.up&&(n.up=e.up);let{cavities:o,...i}=R();return{...i,...kc(e)||o===void 0?{}:{cavities:o},mesh:n}}async function c_(e){try{return await rt({file:"new.mould.json",mould:e}),!0}catch(t){if(t instanceof y&&t.status===422)return!1;throw t}}var m_=e=>Gt(e.replaceAll(/[^\w.-]+/g,"_"),a.files?.meshes??[]);var vi={measures:"By its inside measures",mesh:"From a mesh file",water:"By measures and weighed water"},xc={schema:"brimwright.mould/1",name:"",cavities:1,owned:1};function Tc(e){Ft();let t={...xc,shape:yi("block")};e==="mesh"?nn(xc,"mesh",vi[e]):nn(e==="water"?{...t,water:Ss}:t,"form",vi[e]),ki()}async function Sc(e,t){Ft(),await Xa(e,t),ki()}async function Rc(e){Ft(),await el(e),ki()}function d_(e){nn(e,"form","More about this mould"),ki()}function ki(){requestAnimationFrame(()=>document.querySelector("#mould-form")?.focus())}function Pc(e){if(!a.mould)return;let{way:t,title:n}=a.mould;return s`<section aria-labelledby="mould-form">
    <h2 id="mould-form" tabindex="-1">${n}</h2>
    ${t==="mesh"?vc(e,d_):gc(e)}
  </section>`}var Es=()=>h({chosen_mould:void 0});function xi(e,t){let n=a.files?.moulds.find(r=>r.file===e),o=a.catalogue.find(r=>r.path===e),i={file:e,name:n?.name||o?.name||e,note:n?.note??"",shipped:n?.shipped??!0,owned:1,told:t};h({chosen_mould:i}),f_(i),requestAnimationFrame(()=>document.querySelector("#mould-title")?.focus())}async function f_(e){try{let[t,n]=await Promise.all([tn({file:e.file}),xe(e.file)]);v(e,{answer:t,owned:e.shipped?1:Number(ie(n.text)?.owned??1)})}catch(t){v(e,{complaint:t instanceof y?t.message:String(t)})}}function Ac(e,t){let n=()=>t(async()=>{await Sc(e.file,e.shipped),Es()});return s`<section aria-labelledby="mould-title">
    <h2 id="mould-title" tabindex="-1">
      ${e.name} <small>${e.shipped?"of the catalogue":`your own, ${e.file}`}</small>
    </h2>
    ${e.told?s`<p role="status">${e.told}</p>`:u} ${e.note?s`<p>${e.note}</p>`:u}
    ${e.complaint?s`<p class="alarm" role="alert">It cannot be measured: ${e.complaint}</p>`:u}
    <div class="beside">
      <div>
        ${e.answer?Sn(e.answer):e.complaint?u:s`<p role="status">Measuring ...</p>`}
        <button type="button" @click=${n}>${e.shipped?"Change a copy of it":"Change it"}</button>
      </div>
      ${e.complaint?u:h_(e,t)}
    </div>
  </section>`}function h_(e,t){let n=o=>()=>t(()=>Pl({mould:e.file,name:e.name,formula:o,...g_(e.answer,e.owned)}));return s`<div>
    <h3>Make a run with it: which base?</h3>
    <ul class="cards">
      ${(a.files?.formulas??[]).map(o=>s`<li>
            <button type="button" ?disabled=${!e.answer} @click=${n(o.file)}>
              <b>${o.name}</b><span>${o.note||o.file}</span>
            </button>
          </li>`)}
    </ul>
  </div>`}function g_({gauge:e},t){let n=e.pockets[0];return{cavities:e.pockets.length*t,deep_mm:n.brim_mm-n.floor_mm}}function Ti(){if(a.formulas.apart)return void Yn().then(e=>e&&Ti());h({view:"start",start_complaint:""}),Es(),Ft(),Si(__),requestAnimationFrame(()=>document.querySelector("h1")?.focus())}async function __(){h({files:await Kt()}),Lo()}function $_(e){Ft(),xi(e,`Saved in ${e}.`)}async function Si(e){h({start_complaint:""});try{await e()}catch(t){h({start_complaint:t instanceof y?t.message:String(t)})}}async function Oc(e){await Si(e),window.scrollTo(0,0)}function Fc(){let{chosen_mould:e,start_complaint:t}=a,n=Pc($_);return s` <h1 tabindex="-1">What will you make?</h1>
    <p class="choice">
      ${a.run.file?s`<button type="button" @click=${()=>h({view:"run"})}>Back to the run</button>`:u}
      ${e||n?s`<button type="button" @click=${Ti}>Back to runs and moulds</button>`:u}
    </p>
    ${t?s`<p class="alarm" role="alert">${t}</p>`:u}
    ${(a.files?.cut??[]).map(o=>s`<p class="alarm">
          More lies in ${o.folder} than is looked at: ${o.looked_at} files and folders. Some of your runs, moulds or
          formulas may be missing below; keep them in a folder of their own, and start brimwright there.
        </p>`)}
    ${e?Ac(e,Oc):n||s`${b_()} ${v_()} ${w_()} ${lc(Si)}`}`}function b_(){let e=a.files?.runs??[],t=e.filter(o=>!o.shipped),n=e.filter(o=>o.shipped);return s`<section aria-labelledby="runs-title">
    <h2 id="runs-title">Open a run</h2>
    ${t.length?s`<ul class="cards">
            ${t.map(Dc)}
          </ul>`:s`<p class="aside">None of your own in ${a.files?.folder} yet.</p>`}
    <h3>Examples</h3>
    <ul class="cards">
      ${n.map(Dc)}
    </ul>
  </section>`}function Dc(e){return s`<li>
    <button type="button" @click=${()=>Oc(()=>ln(e.file))}>
      <b>${e.name||e.file}</b><span>${e.file}</span>
    </button>
  </li>`}function w_(){return s`<section aria-labelledby="moulds-title">
    <h2 id="moulds-title">A mould that is there: make a run with it, or change it</h2>
    <ul class="cards">
      ${y_()}${a.catalogue.map(e=>s`<li>
            <button type="button" @click=${()=>xi(e.path)}>
              <b>${e.name}</b
              ><span>${T(ne(a.units,e.brimful_ml))}, ${e.cavities} in one; ${e.description}</span>
            </button>
          </li>`)}
    </ul>
  </section>`}function y_(){return(a.files?.moulds??[]).filter(t=>!t.shipped).map(t=>s`<li>
        <button type="button" @click=${()=>xi(t.file)}>
          <b>${t.name||t.file}</b><span>${T_(t.file)}</span>
        </button>
      </li>`)}function v_(){return s`<section aria-labelledby="own-title">
    <h2 id="own-title">New run with a mould of your own</h2>
    ${k_()}
    <div class="choice">
      ${Object.entries(vi).map(([e,t])=>s`<button type="button" @click=${()=>Tc(e)}>${t}</button>`)}
    </div>
  </section>`}function k_(){return Da(Ve).map(e=>{let t=String(ie(e.text)?.name??"").trim()||x_(e)||"a mould without a name yet";return s`<div class="banner">
      <p>What you typed of <b>${t}</b> is still here, and in no file yet.</p>
      <div class="choice">
        <button type="button" @click=${()=>Si(()=>Rc(e))}>Go on with it</button>
        <button type="button" @click=${()=>{Dt(Ve,e.id),De()}}>Let it go</button>
      </div>
    </div>`})}var x_=({file:e})=>a.files?.moulds.find(t=>t.file===e)?.name;function T_(e){let t=gl(e);return t?"complaint"in t?`your own, ${e}; it cannot be measured: ${t.complaint}`:`${T(ne(a.units,t.brimful_ml))}, ${t.cavities} in one; your own, ${e}`:`your own, ${e}; measuring ...`}var Ri=Math.PI/8,S_=500,Ls=class extends HTMLElement{#n=[];#o=0;#e;#u=!1;#t=!1;#i="";#r=!1;#s="";#a="Looking at it ...";#p=0;#d=!1;#f=new ResizeObserver(()=>this.#e?.fit());#h=new IntersectionObserver(([t])=>this.#$(t.isIntersecting),{rootMargin:"400px"});set views(t){this.#n=t,this.#g()}connectedCallback(){this.#l(),this.#h.observe(this)}disconnectedCallback(){window.clearTimeout(this.#p),this.#h.disconnect(),this.#f.disconnect(),this.#e?.end(),this.#e=void 0,this.#s="",URL.revokeObjectURL(this.#i)}#$(t){this.#d=t,t&&requestIdleCallback(()=>{this.#b()},{timeout:1500})}async#b(){if(this.#e||this.#t)return this.#g();let t=this.querySelector("canvas");if(!(!this.isConnected||!t||this.#u)){this.#u=!0;try{let{Turntable:n}=await import("./solid_view-3BHCV7RK.js");this.#e=new n(t),this.#f.observe(t)}catch{this.#t=!0}this.#u=!1,this.#l(),await this.#m()}}#g(){let t=this.#e||this.#t;!this.#d||!t||this.#c()===this.#s||(window.clearTimeout(this.#p),this.#p=window.setTimeout(()=>{this.#m()},S_))}#c(){let{of:t}=this.#n[this.#o],n=this.#t?"plan"in t?"piece":"picture":"glb",[o,i]=Object.entries(t)[0];return JSON.stringify({kind:n,[o]:this.#r&&!this.#t?{...i,"cut-open":!0}:i})}async#m(){let t=this.#c();if(t!==this.#s){try{let n=await Vt(JSON.parse(t));if(t!==this.#c()||!this.isConnected)return;this.#t?(URL.revokeObjectURL(this.#i),this.#i=URL.createObjectURL(n)):this.#e?.show(Ao(await n.arrayBuffer())),this.#s=t,this.#a=""}catch(n){if(!(n instanceof y))throw n;this.#a=n.message}this.#l()}}#_(t){t(),this.#a="Looking at it ...",this.#l(),this.#m()}#l(){let t=s`<div class="choice" role="group" aria-label="What to look at">
      ${this.#n.map((o,i)=>s`<button
            type="button"
            aria-pressed=${i===this.#o?"true":"false"}
            @click=${()=>this.#_(()=>this.#o=i)}
          >
            ${o.words}
          </button>`)}
    </div>`,n=s`<p class="aside" role="status">${this.#a}</p>`;Pt(s`${t} ${this.#t?this.#y():this.#w()} ${n}`,this)}#w(){let t=i=>()=>this.#e?.turn(i),n=i=>()=>this.#e?.tip(i),o=()=>this.#_(()=>this.#r=!this.#r);return s`<canvas
        role="img"
        aria-label="${this.#n[this.#o]?.words??""} as a solid; turn it with the buttons below."
      ></canvas>
      <div class="choice">
        <button type="button" @click=${t(-Ri)}>Turn left</button>
        <button type="button" @click=${t(Ri)}>Turn right</button>
        <button type="button" @click=${n(Ri)}>From above</button>
        <button type="button" @click=${n(-Ri)}>From below</button>
        <button type="button" aria-pressed=${this.#r?"true":"false"} @click=${o}>Cut open</button>
      </div>`}#y(){return s`<p class="aside">This browser shows no solids; here is the drawing.</p>
      ${this.#i?s`<img
              src=${this.#i}
              alt="${this.#n[this.#o].words}, drawn to scale with its measures"
            />`:u}`}};customElements.define("solid-panel",Ls);var Mc=document.getElementById("page");function Ec(){return s` <button type="button" class="skip" @click=${()=>document.getElementById("main")?.focus()}>
      To the figures
    </button>
    ${oc(Ti)} ${Dl()}
    <main id="main" tabindex="-1" class=${a.is_old&&a.view!=="start"?"old-now":""}>
      ${a.fault?s`${a.view==="start"?u:s`<h1>Brimwright</h1>`}
              <p class="alarm" role="alert">${a.fault}</p>`:u}
      ${a.view==="run"?ic():a.view==="formula"?ac():a.view==="start"?Fc():a.fault?u:s`<h1>Brimwright</h1>
                    <p>Reading the runs of this folder ...</p>`}
    </main>
    <p class="unseen" role="status">${a.announcement}</p>`}ra(()=>{Pt(Ec(),Mc),Lc()});addEventListener("resize",Lc);Pt(Ec(),Mc);document.addEventListener("keydown",e=>{!(e.ctrlKey||e.metaKey)||e.key.toLowerCase()!=="z"||a.view==="run"&&(e.preventDefault(),(e.shiftKey?Po:en)())});document.addEventListener("visibilitychange",()=>{a.view!=="run"&&a.view!=="formula"||(document.visibilityState==="visible"?$r().catch(()=>{}):K(a.run)&&Fe())});function R_(){if(!a.run.file)return Is();h({fault:void 0}),K(a.run)&&Fe(),ee()}function Is(){h({fault:void 0}),Rl().catch(e=>{h({fault:P_(e)}),e instanceof y&&e.may_pass&&window.setTimeout(Is,2e3)})}function P_(e){return e instanceof y&&[401,403].includes(e.status)?"This address is from an earlier start. Open the address that brimwright printed this time: it may be pasted here.":e instanceof Error?e.message:String(e)}function Lc(){let e=document.querySelector(".foremost")?.offsetHeight??0;document.documentElement.style.setProperty("--foremost",`${e}px`)}fl();pa(R_);Is();
